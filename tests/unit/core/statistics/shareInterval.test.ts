import { describe, expect, it } from 'vitest';
import { shareInterval } from '#core/statistics/shareInterval';

describe('shareInterval(count, of)', () => {
  // Newcombe 1998, table I, method 3 (from memory), to four decimals.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('of %d of %d is %d to %d', (count, of, low, high) => {
    const found = shareInterval(count, of)!;
    expect(found.low).toBeCloseTo(low, 4);
    expect(found.high).toBeCloseTo(high, 4);
    expect(found.share).toBe(count / of);
  });

  it('of 5 of 9 is 27 to 81 %', () => {
    // z^2 = 3.8416; middle (.5556 + .2134) / 1.4268 = .5390; half 1.96 sqrt(.02743 + .01186) / 1.4268 = .2723.
    const { low, high } = shareInterval(5, 9)!;
    expect([low, high].map((end) => Math.round(100 * end))).toEqual([27, 81]);
  });

  it('of all is the mirror of none', () => {
    expect(shareInterval(20, 20)!.low).toBeCloseTo(1 - shareInterval(0, 20)!.high, 12);
    expect(shareInterval(20, 20)!.high).toBe(1);
  });

  it('is null of nothing, and refuses what is no share', () => {
    expect(shareInterval(0, 0)).toBeNull();
    for (const [count, of] of [
      [3, 2],
      [-1, 2],
      [0.5, 2],
      [NaN, 2],
    ] as const)
      expect(() => shareInterval(count, of)).toThrow(RangeError);
  });
});
