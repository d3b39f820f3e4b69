import { describe, expect, it } from 'vitest';
import { chiSquareQuantile } from '#core/statistics/chiSquareQuantile';

describe('chiSquareQuantile(probability, freedom)', () => {
  // From scipy.stats.chi2.ppf; the usual tables have the same to three decimals.
  it.each([
    [0.025, 1, 0.0009820691171752555],
    [0.025, 5, 0.8312116134866625],
    [0.05, 2, 0.10258658877510106],
    [0.05, 5, 1.1454762260617692],
    [0.05, 10, 3.9402991361190605],
    [0.05, 20, 10.85081139418259],
    [0.05, 50, 34.76425168350175],
    [0.975, 1, 5.023886187314888],
    [0.975, 5, 12.832501994030027],
    [0.975, 50, 71.42019518750642],
  ])('(%d, %d) is %d', (probability, freedom, value) => {
    expect(chiSquareQuantile(probability, freedom) / value).toBeCloseTo(1, 8);
  });

  it('is -2 ln(1 - p) with two degrees of freedom', () => {
    for (const p of [0.001, 0.3, 0.999]) expect(chiSquareQuantile(p, 2)).toBeCloseTo(-2 * Math.log(1 - p), 9);
  });

  it('is near its freedom in the middle of a large one', () => {
    // Wilson & Hilferty: 1000 (1 - 2 / 9000)^3 = 999.33.
    expect(chiSquareQuantile(0.5, 1000)).toBeCloseTo(999.33, 2);
  });

  it.each([
    [0, 3],
    [1, 3],
    [NaN, 3],
    [0.5, 0],
    [0.5, 2.5],
  ])('refuses (%d, %d)', (probability, freedom) => {
    expect(() => chiSquareQuantile(probability, freedom)).toThrow(RangeError);
  });
});
