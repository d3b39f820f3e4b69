import { describe, expect, it } from 'vitest';
import { movementEdgeMs } from '#core/segmentation/movementEdgeMs';

const timesMs = Float64Array.from({ length: 61 }, (_, i) => 20 * i);
/** Rest until 400 ms, then a movement of 600 ms with least jerk: 10 s^3 - 15 s^4 + 6 s^5. */
const leastJerk = (sample: number) => {
  const share = Math.min(1, Math.max(0, (timesMs[sample]! - 400) / 600));
  return share ** 3 * (10 - 15 * share + 6 * share ** 2);
};
/**
 * The cube root of least jerk is nearly straight between 3 and 20 % of the way (s = 0.158 and 0.326): continued from
 * there it meets 0 at s = 0.158 - 0.311 / ((0.585 - 0.311) / 0.168) = -0.03, so 3 % of the movement too early; 20 ms
 * between samples add a little.
 */
const earlyMs = 0.04 * 600;

describe('movementEdgeMs(timesMs, distance, from, step, stop)', () => {
  it('finds where a smooth movement began, well before it can be seen', () => {
    // 3 % of the way are done only 0.158 x 600 = 95 ms after the start.
    const edgeMs = movementEdgeMs(timesMs, leastJerk, 45, -1, 0);
    expect(edgeMs).toBeGreaterThan(400 - earlyMs);
    expect(edgeMs).toBeLessThan(400);
  });

  it('finds where it ended', () => {
    const edgeMs = movementEdgeMs(timesMs, (sample) => 1 - leastJerk(sample), 25, 1, 60);
    expect(edgeMs).toBeGreaterThan(1000);
    expect(edgeMs).toBeLessThan(1000 + earlyMs);
  });

  it('finds the exact edge of a movement that follows the third power of time', () => {
    const cubic = (sample: number) => Math.max(0, (timesMs[sample]! - 310) / 700) ** 3;
    // Exact but for reading the curve straight between two samples.
    expect(Math.abs(movementEdgeMs(timesMs, cubic, 50, -1, 0) - 310)).toBeLessThan(4);
  });

  it('is at once where the movement is over already', () => {
    // From 1 % of the way to 2 %, both below the 3 % that can be told from rest.
    const over = (sample: number) => (sample === 12 ? 0.01 : 0.02);
    expect(movementEdgeMs(timesMs, over, 12, 1, 20)).toBe(240);
  });

  it('never leaves the stretch that it may search', () => {
    const late = movementEdgeMs(timesMs, leastJerk, 45, -1, 28);
    expect(late).toBeGreaterThanOrEqual(timesMs[28]!);
    expect(late).toBeLessThanOrEqual(timesMs[45]!);
    expect(movementEdgeMs(timesMs, () => 1, 30, -1, 10)).toBe(200);
    expect(movementEdgeMs(timesMs, leastJerk, 12, 1, 12)).toBe(240);
  });
});
