import { describe, expect, it } from 'vitest';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { createStandWatch } from '#features/home/store/standWatch';
import { filmSeated, filmStanding } from '../../../../support/filmStill';
import { rowsOf } from '../../../../support/smallSet';

/** What was said last over a film. */
function lastLine(track: KeypointTrack): string | null | undefined {
  const watch = createStandWatch();
  let last: string | null | undefined;
  for (const { timeMs, row } of rowsOf(track)) {
    const line = watch.push({ timeMs, row, widthPx: track.widthPx, heightPx: track.heightPx });
    if (line !== undefined) last = line;
  }
  return last;
}

describe('createStandWatch().push(frame)', () => {
  it('has nothing to say to somebody who stands still', () => {
    expect(lastLine(filmStanding({ side: 'left', noisePx: 0.7 }).track)).toBeNull();
  });

  it('asks somebody who sits to stand up, and somebody who was seen too briefly to stand still', () => {
    expect(lastLine(filmSeated().track)).toBe('Stand upright on both feet, and keep still.');
    expect(lastLine(filmStanding({ filmed: { fromMs: 0, untilMs: 900 } }).track)).toBe(
      'Stand still for two seconds.',
    );
  });
});
