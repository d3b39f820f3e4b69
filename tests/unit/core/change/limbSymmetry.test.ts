import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limbSymmetry } from '#core/change/limbSymmetry';

const of = (value: number, sem: number | null = 1.2) => ({ value, sem });
const ends = (found: ReturnType<typeof limbSymmetry>) =>
  found.interval && [Math.round(found.interval.lowPct), Math.round(found.interval.highPct)];

describe('limbSymmetry(involved, uninvolved)', () => {
  // The interval of the first is worked out in ratioInterval.test.ts. The last: g = (2.352 / 32)^2 = .005402; half =
  // 2.352 / 32 x sqrt(.994598 + 1.5625) = .11753; (1.25 -+ .11753) / .994598 = 1.1386 and 1.3750.
  it.each([
    [18, 24, 75, [63, 88], 'below'],
    [22, 24, 92, [79, 106], 'within-error'],
    [40, 32, 125, [114, 137], 'beyond'],
  ] as const)('%d of %d: %d %% (%j), %s', (involved, uninvolved, pct, interval, toLine) => {
    const found = limbSymmetry(of(involved), of(uninvolved));
    expect(Math.round(found.pct)).toBe(pct);
    expect(ends(found)).toEqual(interval);
    expect(found.toLine).toBe(toLine);
  });

  it('passes a line against the other leg now, and not against it before', () => {
    // 150 / 160 = .9375, 150 / 180 = .8333.
    expect(limbSymmetry(of(150, null), of(160, null)).pct).toBe(93.75);
    expect(limbSymmetry(of(150, null), of(180, null)).pct).toBeCloseTo(83.33, 2);
  });

  it('has no interval where an error is not known or too large', () => {
    for (const found of [
      limbSymmetry(of(18, null), of(24)),
      limbSymmetry(of(18), of(24, null)),
      limbSymmetry(of(1), of(2)),
    ])
      expect(found).toMatchObject({ interval: null, toLine: 'unknown' });
  });

  it('holds its own percentage in its interval, and never goes below 0', () => {
    const amount = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(amount, amount, fc.double({ min: 0, max: 4, noNaN: true }), (involved, uninvolved, sem) => {
        const { pct, interval } = limbSymmetry(of(involved, sem), of(uninvolved, sem));
        if (interval === null) return;
        expect(interval.lowPct).toBeGreaterThanOrEqual(0);
        expect(interval.lowPct).toBeLessThanOrEqual(pct + 1e-9);
        expect(interval.highPct).toBeGreaterThanOrEqual(pct - 1e-9);
      }),
    );
  });

  it('refuses what has no percentage', () => {
    expect(() => limbSymmetry(of(3), of(0))).toThrow('got 3 and 0');
    expect(() => limbSymmetry(of(-1), of(3))).toThrow(RangeError);
  });
});
