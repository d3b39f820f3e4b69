import { quantile } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { medianOf, quantileOf } from '#core/signal/quantileOf';

describe('quantileOf(values, share)', () => {
  it('interpolates between neighbours', () => {
    // Sorted 1, 4, 10: place 0.25 * 2 = 0.5, halfway from 1 to 4.
    expect(quantileOf([10, 1, 4], 0.25)).toBe(2.5);
    expect(medianOf([10, 1, 4])).toBe(4);
    expect(quantileOf([7], 0.9)).toBe(7);
  });

  it('is undefined without values', () => {
    expect(medianOf([])).toBeUndefined();
  });

  it('agrees with d3-array', () => {
    const values = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 50 });
    fc.assert(
      fc.property(values, fc.double({ min: 0, max: 1, noNaN: true }), (numbers, share) => {
        expect(quantileOf(numbers, share)).toBeCloseTo(quantile(numbers, share)!, 6);
      }),
    );
  });
});
