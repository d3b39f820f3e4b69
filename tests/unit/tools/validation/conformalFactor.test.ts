import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/seededRandom';
import { conformalFactor } from '#tools/validation/conformalFactor';

describe('conformalFactor(ratios, chance)', () => {
  it('is the ceil((n + 1) chance)-th smallest ratio', () => {
    // 19 ratios: 20 x 0.9 = 18. 9 ratios: 10 x 0.9 = 9. 20 ratios: 21 x 0.9 = 18.9, the 19th.
    const upTo = (n: number) => Array.from({ length: n }, (_, i) => (n - i) / 10);
    expect([19, 9, 20].map((n) => conformalFactor(upTo(n)))).toEqual([1.8, 0.9, 1.9]);
    expect(conformalFactor([0.4, 0.1, 0.3, 0.2], 0.5)).toBe(0.3);
  });

  it('is infinite where there are too few errors to tell', () => {
    expect([0, 8].map((n) => conformalFactor(new Array<number>(n).fill(0.5)))).toEqual([Infinity, Infinity]);
  });

  it('holds the next error as often as promised, whatever the distribution', () => {
    // 48 errors of a lopsided distribution and one more, 4000 times: 45 / 49 of the next, told to 0.004.
    const random = seededRandom(7);
    const next = () => Math.abs(random.gaussian()) ** 3;
    const held = Array.from({ length: 4000 }, () => {
      const factor = conformalFactor(Array.from({ length: 48 }, next));
      return next() <= factor;
    }).filter(Boolean).length;
    expect(Math.abs(held / 4000 - 45 / 49)).toBeLessThan(3 * 0.004);
  });

  it('grows with the chance, and with the errors as their unit', () => {
    const ratios = fc.array(fc.double({ min: 0, max: 5, noNaN: true }), { minLength: 20, maxLength: 60 });
    fc.assert(
      fc.property(ratios, (some) => {
        expect(conformalFactor(some, 0.9)).toBeGreaterThanOrEqual(conformalFactor(some, 0.8));
        expect(
          conformalFactor(
            some.map((ratio) => 2 * ratio),
            0.8,
          ),
        ).toBeCloseTo(2 * conformalFactor(some, 0.8), 12);
      }),
    );
  });

  it('refuses what is no ratio and no chance', () => {
    for (const ratio of [-0.1, NaN]) expect(() => conformalFactor([1, ratio])).toThrow(RangeError);
    for (const chance of [0, 1, NaN]) expect(() => conformalFactor([1], chance)).toThrow(RangeError);
  });
});
