import type { Side } from '#core/protocol/side';
import type { Direction } from '#core/scoring/deciding';
import type { Verdict } from '#core/scoring/verdict';

/** The form of a verdict's mark, the same on every surface. */
export type VerdictForm = 'dot' | 'ring' | 'half-dot' | 'open-triangle' | 'triangle' | 'dash';

export const verdictForms: Record<Verdict, VerdictForm> = {
  in: 'dot',
  'probably-in': 'ring',
  'cant-tell': 'half-dot',
  'probably-out': 'open-triangle',
  out: 'triangle',
  'not-measured': 'dash',
};

const onPicture = { inLine: '#009E73', cantTell: '#E69F00', outOfLine: '#D55E00', notMeasured: '#B5BBC0' };

/** Colours of the verdicts over a picture, each drawn with a dark outline: Okabe & Ito 2008. */
export const verdictColours: Record<Verdict, string> = {
  in: onPicture.inLine,
  'probably-in': onPicture.inLine,
  'cant-tell': onPicture.cantTell,
  'probably-out': onPicture.outOfLine,
  out: onPicture.outOfLine,
  'not-measured': onPicture.notMeasured,
};

/** The same colours on a page, as the theme has them. */
export const verdictTokens: Record<Verdict, string> = {
  in: 'var(--in-line)',
  'probably-in': 'var(--in-line)',
  'cant-tell': 'var(--cant-tell)',
  'probably-out': 'var(--out-of-line)',
  out: 'var(--out-of-line)',
  'not-measured': 'var(--not-measured)',
};

export type Pointing = 'left' | 'right' | 'up' | 'down';

/**
 * Where a direction points in the picture of somebody who faces the camera.
 *
 * @param isMirrored  whether the picture is shown as a mirror does
 */
export function picturePointing(side: Side, direction: Direction, isMirrored = false): 'left' | 'right' {
  const isLeft = (side === 'left') === (direction === 'inward');
  return isLeft !== isMirrored ? 'left' : 'right';
}

/** Where a direction points on a horizontal lane: inward is up; null where the knee was not the one out of line. */
export function lanePointing(direction: Direction | null): 'up' | 'down' | null {
  return direction && (direction === 'inward' ? 'up' : 'down');
}

/** Quarter turns, clockwise, that bring a triangle pointing up to where it should point. */
export const quarterTurns: Record<Pointing, number> = { up: 0, right: 1, down: 2, left: 3 };
