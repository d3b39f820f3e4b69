import { describe, expect, it } from 'vitest';
import { normalCdf } from '#core/statistics/normalCdf';

describe('normalCdf(z)', () => {
  // Abramowitz & Stegun, table 26.1 (from memory); scipy 1.17.1, scipy.stats.norm.cdf, gives the same digits.
  it.each([
    [0, 0.5],
    [0.5, 0.691462461274013],
    [1, 0.841344746068543],
    [1.5, 0.933192798731142],
    [2, 0.977249868051821],
    [2.5, 0.993790334674224],
    [3, 0.99865010196837],
  ])('is the handbook’s at %d', (z, expected) => {
    expect(normalCdf(z)).toBeCloseTo(expected, 14);
  });

  // scipy 1.17.1: scipy.stats.norm.cdf.
  it.each([
    [1.96, 0.9750021048517795],
    [-1, 0.15865525393145707],
    [-3, 0.0013498980316300933],
    [5, 0.9999997133484281],
    [7, 0.9999999999987201],
  ])('equals scipy at %d', (z, expected) => {
    expect(normalCdf(z)).toBeCloseTo(expected, 14);
  });

  it('leaves the other side to the mirror image', () => {
    for (const z of [0.3, 1.7, 4.2, 7.9]) expect(normalCdf(z) + normalCdf(-z)).toBeCloseTo(1, 14);
  });

  it('is sure far out, and does not jump where it begins to be', () => {
    expect([-Infinity, -8, 8, Infinity].map(normalCdf)).toEqual([0, 0, 1, 1]);
    expect(normalCdf(7.999)).toBeCloseTo(1, 14);
    expect(normalCdf(-7.999)).toBeCloseTo(0, 14);
  });

  it('never falls', () => {
    // Neighbours differ by no less than their rounding.
    for (let z = -9; z < 9; z += 0.01) {
      expect(normalCdf(z + 0.01)).toBeGreaterThanOrEqual(normalCdf(z) - 1e-15);
    }
  });
});
