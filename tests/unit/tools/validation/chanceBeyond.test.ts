import { describe, expect, it } from 'vitest';
import { chanceBeyond } from '#tools/validation/chanceBeyond';

describe('chanceBeyond(peakDeg, bandDeg, limitDeg)', () => {
  // Abramowitz & Stegun, table 26.1: Phi(.5) = .69146, Phi(1) = .84134, Phi(2) = .97725. A band of 3.29 is an sd of 2.
  it.each([
    [11, 3.29, 0.69146],
    [12, 3.29, 0.84134],
    [8, 3.29, 0.15866],
    [12, 1.645, 0.97725],
    [6, 3.29, 0.02275],
    [-14, 19.74, 0.02275], // 24 below, an sd of 12
  ])('of %d ± %d is the normal table’s at a limit of 10', (peakDeg, bandDeg, expected) => {
    expect(chanceBeyond(peakDeg, bandDeg, 10)).toBeCloseTo(expected, 5);
  });

  it('is one in twenty where a band just clears the limit', () => {
    // Phi(1.645) = .95; the table's own argument is 1.64485.
    expect(chanceBeyond(5.2, 4.8, 10)).toBeCloseTo(0.05, 4);
    expect(chanceBeyond(14.8, 4.8, 10)).toBeCloseTo(0.95, 4);
  });

  it('is one half at the limit, and the other side’s mirror image', () => {
    expect(chanceBeyond(10, 4, 10)).toBe(0.5);
    for (const off of [0.3, 2.7, 11]) {
      expect(chanceBeyond(8 + off, 4, 8) + chanceBeyond(8 - off, 4, 8)).toBeCloseTo(1, 12);
    }
  });

  it('is sure without a band, where a peak at the limit is in line', () => {
    expect([9.9, 10, 10.1].map((peakDeg) => chanceBeyond(peakDeg, 0, 10))).toEqual([0, 0, 1]);
  });

  it('throws where there is no number to go by', () => {
    expect(() => chanceBeyond(NaN, 4, 10)).toThrow(RangeError);
    expect(() => chanceBeyond(9, -1, 10)).toThrow('A standard deviation is 0 or above');
  });
});
