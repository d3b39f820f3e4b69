import { describe, expect, it } from 'vitest';
import { createSlidingTrack } from '#core/keypoints/createSlidingTrack';
import { keypointCount } from '#core/keypoints/keypointNames';

const rowOf = (x: number) => new Float32Array(keypointCount * 3).fill(1).fill(x, 0, 1);

describe('createSlidingTrack(windowMs)', () => {
  it('keeps the frames of its window, but not one exactly as old as the window is long', () => {
    const sliding = createSlidingTrack(100);
    [10, 50, 60, 110, 150].forEach((timeMs) => sliding.push({ timeMs, row: rowOf(timeMs) }));
    const { timesMs, xPx, widthPx, heightPx } = sliding.read(640, 480);
    expect([...timesMs]).toEqual([60, 110, 150]);
    expect([0, 1, 2].map((frame) => xPx[frame * keypointCount])).toEqual([60, 110, 150]);
    expect([widthPx, heightPx]).toEqual([640, 480]);
  });

  it('keeps frames without a person', () => {
    const sliding = createSlidingTrack(100);
    sliding.push({ timeMs: 10, row: null });
    sliding.push({ timeMs: 20, row: rowOf(7) });
    const { timesMs, score } = sliding.read(640, 480);
    expect([...timesMs]).toEqual([10, 20]);
    expect(score[0]).toBe(0);
    expect(score[keypointCount]).toBe(1);
  });

  it('knows the time of its newest frame, and starts afresh when cleared', () => {
    const sliding = createSlidingTrack(100);
    expect(sliding.lastMs()).toBeNull();
    sliding.push({ timeMs: 10, row: null });
    sliding.push({ timeMs: 20, row: null });
    expect(sliding.lastMs()).toBe(20);
    sliding.clear();
    expect(sliding.lastMs()).toBeNull();
    expect(sliding.read(640, 480).timesMs).toHaveLength(0);
    sliding.push({ timeMs: 5, row: null });
    expect([...sliding.read(640, 480).timesMs]).toEqual([5]);
  });

  it('gives a track that later frames do not change', () => {
    const sliding = createSlidingTrack(100);
    sliding.push({ timeMs: 10, row: rowOf(1) });
    const track = sliding.read(640, 480);
    sliding.push({ timeMs: 200, row: rowOf(2) });
    expect([...track.timesMs]).toEqual([10]);
    expect(track.xPx[0]).toBe(1);
  });

  it('refuses frames whose times do not increase', () => {
    const sliding = createSlidingTrack(100);
    sliding.push({ timeMs: 20, row: null });
    sliding.push({ timeMs: 20, row: null });
    expect(() => sliding.read(640, 480)).toThrow(RangeError);
  });
});
