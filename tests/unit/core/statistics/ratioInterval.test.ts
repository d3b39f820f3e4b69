import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/seededRandom';
import { ratioInterval } from '#core/statistics/ratioInterval';

describe('ratioInterval(a, b, sa, sb)', () => {
  it('is worked out by hand for 18 of 24 with an error of 1.2 each', () => {
    // g = (1.96 x 1.2 / 24)^2 = .009604; half = 1.96 / 24 x 1.2 x sqrt(1 - g + .5625) = .12212;
    // (.75 -+ .12212) / .990396 = .6340 and .8806.
    const { ratio, low, high } = ratioInterval(18, 24, 1.2, 1.2)!;
    expect(ratio).toBe(0.75);
    expect(low).toBeCloseTo(0.634, 3);
    expect(high).toBeCloseTo(0.8806, 3);
  });

  it('holds the ratios whose difference a - r b is within 1.96 of its error', () => {
    const { low, high } = ratioInterval(22, 24, 1.2, 1.9)!;
    for (const r of [low, high])
      expect(Math.abs(22 - r * 24) / Math.hypot(1.2, r * 1.9)).toBeCloseTo(1.96, 9);
  });

  it('holds the true ratio in 95 of 100 repeats', () => {
    const random = seededRandom(4);
    const repeats = 20_000;
    let held = 0;
    for (let i = 0; i < repeats; i++) {
      const { low, high } = ratioInterval(
        18 + 1.2 * random.gaussian(),
        24 + 1.2 * random.gaussian(),
        1.2,
        1.2,
      )!;
      if (low <= 0.75 && 0.75 <= high) held++;
    }
    // Standard error of the share: sqrt(.95 x .05 / 20000) = .0015; four of them.
    expect(Math.abs(held / repeats - 0.95)).toBeLessThan(0.006);
  });

  it('is the ratio alone without error, and null where b may be 0', () => {
    expect(ratioInterval(3, 4, 0, 0)).toEqual({ ratio: 0.75, low: 0.75, high: 0.75 });
    expect(ratioInterval(3, 4, 1, 2.1)).toBeNull();
  });

  it('refuses a ratio to 0, an error below 0 and what is not a number', () => {
    expect(() => ratioInterval(3, 0, 1, 1)).toThrow(RangeError);
    expect(() => ratioInterval(3, 4, -1, 1)).toThrow('got -1');
    expect(() => ratioInterval(NaN, 4, 1, 1)).toThrow('got NaN');
  });
});
