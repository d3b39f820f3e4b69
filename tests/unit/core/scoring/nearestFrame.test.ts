import { describe, expect, it } from 'vitest';
import { nearestFrame } from '#core/scoring/nearestFrame';
import { seekTimeMs } from '#ui/drawing/seekTimeMs';

const timesMs = Float64Array.of(0, 40, 75, 130);

describe('nearestFrame(timesMs, timeMs)', () => {
  it.each([
    [-10, 0],
    [19, 0],
    [20, 0],
    [21, 1],
    [60, 2],
    [102, 2],
    [103, 3],
    [999, 3],
  ])('finds for %f ms frame %i', (timeMs, frame) => expect(nearestFrame(timesMs, timeMs)).toBe(frame));

  it('is -1 without frames and 0 with one', () => {
    expect(nearestFrame([], 5)).toBe(-1);
    expect(nearestFrame([7], 5)).toBe(0);
  });
});

describe('seekTimeMs(timesMs, frame)', () => {
  it('aims at the middle of the time for which a frame is shown', () => {
    expect(seekTimeMs(timesMs, 1)).toBe(57.5);
    // The last frame lasts as long as the one before it: 130 + 55 / 2.
    expect(seekTimeMs(timesMs, 3)).toBe(157.5);
  });

  it('stays in range', () => {
    expect(seekTimeMs(timesMs, -4)).toBe(20);
    expect(seekTimeMs(timesMs, 9)).toBe(157.5);
    expect(seekTimeMs([], 0)).toBe(0);
    expect(seekTimeMs([33], 0)).toBe(33);
  });
});
