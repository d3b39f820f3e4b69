import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withinSetTrend } from '#core/statistics/withinSetTrend';

describe('withinSetTrend(values)', () => {
  it('gives the line that Anscombe 1973 prints for his first data set', () => {
    // His x are the whole numbers 4 to 14; in their order, y: slope 0.5, standard error 0.118.
    const { slope, standardError, count } = withinSetTrend([
      4.26, 5.68, 7.24, 4.82, 6.95, 8.81, 8.04, 8.33, 10.84, 7.58, 9.96,
    ])!;
    expect(count).toBe(11);
    expect(slope.toFixed(3)).toBe('0.500');
    expect(standardError.toFixed(3)).toBe('0.118');
  });

  it('gives slope, error and interval of a set worked by hand', () => {
    // Repetitions 1 to 4 at 2, 5, 4, 9: mean x 2.5, mean y 5, sum xx 5, sum xy = 4.5 + 0 - 0.5 + 6 = 10, slope 2.
    // Off the line: 0, 1, -2, 1: squares 6; SE = sqrt(6 / 2 / 5) = 0.774597; t(2) = 4.302653: 2 -+ 3.332820.
    const trend = withinSetTrend([2, 5, 4, 9])!;
    expect(trend.slope).toBeCloseTo(2, 12);
    expect(trend.standardError).toBeCloseTo(0.774597, 6);
    expect(trend.low).toBeCloseTo(-1.33282, 5);
    expect(trend.high).toBeCloseTo(5.33282, 5);
    expect(trend.isBeyondError).toBe(false);
  });

  it('finds a drift that the scatter does not explain, either way', () => {
    expect(withinSetTrend([3, 5.1, 6.9, 9, 11.1])!.isBeyondError).toBe(true);
    const falling = withinSetTrend([11.1, 9, 6.9, 5.1, 3])!;
    expect(falling.isBeyondError).toBe(true);
    expect(falling.high).toBeLessThan(0);
  });

  it('leaves a gap for a repetition that was not measured', () => {
    // 1, 3 and 5 at 4, 8 and 12: 2 a repetition.
    expect(withinSetTrend([4, null, 8, null, 12])).toMatchObject({ count: 3, slope: 2, standardError: 0 });
  });

  it('finds no drift where all repetitions are alike', () => {
    expect(withinSetTrend([6, 6, 6])).toMatchObject({ slope: 0, low: 0, high: 0, isBeyondError: false });
  });

  it('is null below three measured repetitions', () => {
    expect(withinSetTrend([])).toBeNull();
    expect(withinSetTrend([4, null, 9, null])).toBeNull();
  });

  it('refuses what is not a number', () => {
    expect(() => withinSetTrend([1, NaN, 3, 4])).toThrow(RangeError);
  });

  const sets = fc.array(fc.integer({ min: -30, max: 30 }), { minLength: 3, maxLength: 20 });

  it('does not depend on a shift, and scales and changes sign with the values', () => {
    fc.assert(
      fc.property(
        sets,
        fc.integer({ min: -50, max: 50 }),
        fc.integer({ min: 1, max: 9 }),
        (values, shift, factor) => {
          const trend = withinSetTrend(values)!;
          const shifted = withinSetTrend(values.map((value) => value + shift))!;
          const turned = withinSetTrend(values.map((value) => -factor * value))!;
          expect(shifted.slope).toBeCloseTo(trend.slope, 9);
          expect(turned.slope).toBeCloseTo(-factor * trend.slope, 9);
          expect(turned.standardError).toBeCloseTo(factor * trend.standardError, 8);
          expect(turned.low).toBeCloseTo(-factor * trend.high, 8);
        },
      ),
    );
  });

  it('has the opposite slope when the set is reversed', () => {
    fc.assert(
      fc.property(sets, (values) => {
        const [forward, backward] = [withinSetTrend(values)!, withinSetTrend(values.toReversed())!];
        expect(backward.slope).toBeCloseTo(-forward.slope, 9);
        expect(backward.standardError).toBeCloseTo(forward.standardError, 9);
      }),
    );
  });
});
