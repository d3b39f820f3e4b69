import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weightedSlope } from '#core/statistics/weightedSlope';
import { withinSetTrend } from '#core/statistics/withinSetTrend';

const weekly = (values: readonly number[], sds: number | readonly number[]) =>
  weightedSlope(values.map((y, x) => ({ x, y, sd: typeof sds === 'number' ? sds : sds[x]! })))!;
/** The worked figures are rounded to 0.001, the intervals to 0.01. */
const [thousandth, hundredth] = [3, 2];
const falling = [14, 13, 11, 12, 9, 8];

describe('weightedSlope(points)', () => {
  it('has the interval of six weeks with one set each', () => {
    // Squares of weeks about 2.5: 17.5; products -20.5; -20.5 / 17.5 = -1.1714; SE 3.01 / sqrt 17.5 = .7195;
    // 1.96 x .7195 = 1.410; over 5 weeks 5.857 and 7.051.
    const { slope, standardError, low, high, span, change, changeBand, isBeyondError } = weekly(
      falling,
      3.01,
    );
    expect(slope).toBeCloseTo(-1.171, thousandth);
    expect(standardError).toBeCloseTo(0.72, thousandth);
    expect([low, high].map((end) => Number(end.toFixed(hundredth)))).toEqual([-2.58, 0.24]);
    expect([span, Number(change.toFixed(1)), Number(changeBand.toFixed(1))]).toEqual([5, -5.9, 7.1]);
    expect(isBeyondError).toBe(false);
  });

  it('is beyond error with three sets a week', () => {
    // 3.01 / sqrt 3 = 1.738; SE 1.738 / sqrt 17.5 = .4155.
    const { low, high, changeBand, isBeyondError } = weekly(falling, 3.01 / Math.sqrt(3));
    expect([low, high].map((end) => Number(end.toFixed(hundredth)))).toEqual([-1.99, -0.36]);
    expect(Number(changeBand.toFixed(1))).toBe(4.1);
    expect(isBeyondError).toBe(true);
  });

  it('has an interval round a slight fall that includes 0', () => {
    // Products -6.5; -6.5 / 17.5 = -.3714.
    const { slope, low, high, isBeyondError } = weekly([12, 11, 13, 10, 11, 10], 3.01);
    expect([slope, low, high].map((end) => Number(end.toFixed(hundredth)))).toEqual([-0.37, -1.78, 1.04]);
    expect(isBeyondError).toBe(false);
  });

  it('counts a week of twice the error a quarter', () => {
    // By hand with weights 1 1 1/4 1 1 1: mean week 13.5 / 5.25 = 2.571; squares 17.286; SE 3 / sqrt 17.286 = .7216.
    const { slope, standardError } = weekly(falling, [3, 3, 6, 3, 3, 3]);
    expect(slope).toBeCloseTo(-1.19, thousandth);
    expect(standardError).toBeCloseTo(0.722, thousandth);
  });

  it('has the slope of ordinary least squares where all errors are alike', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 3, maxLength: 9 }), (values) => {
        expect(weekly(values, 2.5).slope).toBeCloseTo(withinSetTrend(values)!.slope, 9);
      }),
    );
  });

  it('does not depend on when counting begins, or on the order', () => {
    const points = falling.map((y, x) => ({ x, y, sd: 1 + x }));
    const later = points.map((point) => ({ ...point, x: point.x + 30 })).reverse();
    expect(weightedSlope(later)!.slope).toBeCloseTo(weightedSlope(points)!.slope, 9);
  });

  it('is null below three points and where all are at one time', () => {
    expect(weightedSlope([])).toBeNull();
    expect(weightedSlope([0, 1].map((x) => ({ x, y: x, sd: 1 })))).toBeNull();
    expect(weightedSlope([4, 5, 6].map((y) => ({ x: 2, y, sd: 1 })))).toBeNull();
  });

  it('refuses an error of 0 and what is not a number', () => {
    expect(() => weightedSlope([{ x: 0, y: 1, sd: 0 }])).toThrow('got 0');
    expect(() => weightedSlope([{ x: 0, y: NaN, sd: 1 }])).toThrow('got NaN');
  });
});
