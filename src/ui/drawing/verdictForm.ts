import type { Side } from '#core/protocol/side';
import type { Direction } from '#core/scoring/deciding';
import type { Verdict } from '#core/scoring/verdict';

/** The form of a verdict's mark, the same on every surface. */
export type VerdictForm = 'dot' | 'half-dot' | 'triangle' | 'dash';

export const verdictForms: Record<Verdict, VerdictForm> = {
  'in-line': 'dot',
  'near-limit': 'half-dot',
  'out-of-line': 'triangle',
  'not-measured': 'dash',
};

/** Colours of the verdicts over a picture, each drawn with a dark outline: Okabe & Ito 2008. */
export const verdictColours: Record<Verdict, string> = {
  'in-line': '#009E73',
  'near-limit': '#E69F00',
  'out-of-line': '#D55E00',
  'not-measured': '#B5BBC0',
};

export type Pointing = 'left' | 'right' | 'up' | 'down';

/** Where a direction points in the picture of somebody who faces the camera. */
export function picturePointing(side: Side, direction: Direction): 'left' | 'right' {
  return (side === 'left') === (direction === 'inward') ? 'left' : 'right';
}

/** Where a direction points on a lane that lies: inward is up; null where it is not the knee that went off. */
export function lanePointing(direction: Direction | null): 'up' | 'down' | null {
  return direction && (direction === 'inward' ? 'up' : 'down');
}

/** Quarter turns, clockwise, that bring a triangle pointing up to where it should point. */
export const quarterTurns: Record<Pointing, number> = { up: 0, right: 1, down: 2, left: 3 };
