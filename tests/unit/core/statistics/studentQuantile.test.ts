import { describe, expect, it } from 'vitest';
import { studentQuantile95 } from '#core/statistics/studentQuantile';

describe('studentQuantile95(freedom)', () => {
  // scipy 1.10.1: scipy.stats.t.ppf(0.975, freedom), whose own search stops some 3e-10 away (tan(0.475 pi) for 1).
  it.each([
    [1, 12.706204736432095],
    [2, 4.302652729911275],
    [3, 3.182446305284263],
    [9, 2.2621571627409915],
    [10, 2.2281388519649385],
    [29, 2.045229642132703],
    [30, 2.0422724563012373],
    [120, 1.9799304050527766],
  ])('equals scipy for %d degrees of freedom', (freedom, expected) => {
    expect(studentQuantile95(freedom)).toBeCloseTo(expected, 8);
  });

  it('is exact for 1 degree of freedom, where t follows from a tangent', () => {
    expect(studentQuantile95(1)).toBeCloseTo(Math.tan(0.475 * Math.PI), 12);
  });

  it.each([0, -2, 1.5, NaN])('refuses %d degrees of freedom', (freedom) => {
    expect(() => studentQuantile95(freedom)).toThrow(RangeError);
  });
});
