import { describe, expect, it } from 'vitest';
import { frameCount, frameRow } from '#core/keypoints/keypointTrack';
import type { Placing } from '#features/home/placing/placing';
import { createPlacingWatch } from '#features/home/store/placingWatch';
import { filmStanding } from '../../../../support/filmStill';

const { track } = filmStanding({ side: 'left', noisePx: 0.7 });
const setup = { task: 'single-leg-squat', side: 'left' } as const;
const facts = { isFurniturePlaced: true, brightness: { mean: 0.5, contrast: 0.2 } };

/** What is seen of somebody who stands well, look by look, from one moment on. */
function watch(watching: ReturnType<typeof createPlacingWatch>, fromMs: number): Placing[] {
  const { widthPx, heightPx, timesMs } = track;
  return Array.from({ length: frameCount(track) }, (_, frame) => frame).flatMap((frame) => {
    const seen = { timeMs: fromMs + timesMs[frame]!, row: frameRow(track, frame), widthPx, heightPx };
    return watching.push(seen, setup, facts, setup.task) ?? [];
  });
}

describe('createPlacingWatch().push(frame, setup, facts, task)', () => {
  it('turns green for somebody who is placed well', () => {
    expect(watch(createPlacingWatch(), 500).at(-1)).toMatchObject({ ready: true, first: null });
  });

  it('starts afresh after the camera was off: no earlier green, and no picture counts as lost', () => {
    const watching = createPlacingWatch();
    const lastMs = 500 + track.timesMs.at(-1)!;
    watch(watching, 500);
    const again = watch(watching, lastMs + 1500);
    expect(again[0]!.ready).toBe(false);
    expect(again.flatMap(({ checks }) => checks).filter(({ short }) => short === 'Close apps')).toEqual([]);
    expect(again.at(-1)!.ready).toBe(true);
  });
});
