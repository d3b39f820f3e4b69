import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquareQuantile } from '#core/statistics/chiSquareQuantile';
import { fQuantile } from '#core/statistics/fQuantile';
import { studentQuantile95 } from '#core/statistics/studentQuantile';

describe('fQuantile(probability, between, within)', () => {
  it.each([
    // Tables of the F distribution, printed with these digits (from memory).
    [0.95, 1, 10, 4.96],
    [0.95, 5, 15, 2.9],
    [0.975, 5, 15, 3.58],
    [0.975, 15, 5, 6.43],
    [0.99, 2, 20, 5.85],
    [0.95, 10, 10, 2.98],
  ])('is the value of tables for %d, %d and %d', (probability, between, within, value) => {
    expect(Math.abs(fQuantile(probability, between, within) - value)).toBeLessThan(0.0051);
  });

  it('has closed forms for 2 degrees of freedom', () => {
    // P(F(2, w) <= f) = 1 - (1 + 2 f / w)^(-w / 2).
    for (const within of [1.5, 4, 7.3])
      expect(fQuantile(0.9, 2, within)).toBeCloseTo((within / 2) * (0.1 ** (-2 / within) - 1), 6);
  });

  it('is the square of Student’s t for 1 degree of freedom above', () => {
    for (const within of [1, 3, 16, 40])
      expect(fQuantile(0.95, 1, within) / studentQuantile95(within) ** 2).toBeCloseTo(1, 6);
  });

  it('nears chi-square by its degrees of freedom where those below are many', () => {
    expect(fQuantile(0.95, 6, 1e6)).toBeCloseTo(chiSquareQuantile(0.95, 6) / 6, 4);
  });

  it('turns over with its degrees of freedom', () => {
    const freedom = fc.double({ min: 0.6, max: 200, noNaN: true });
    fc.assert(
      fc.property(freedom, freedom, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (one, other, p) => {
        expect(fQuantile(p, one, other) * fQuantile(1 - p, other, one)).toBeCloseTo(1, 5);
      }),
    );
  });

  it('refuses what is out of range', () => {
    expect(() => fQuantile(1, 2, 3)).toThrow('A probability is above 0 and below 1, got 1.');
    expect(() => fQuantile(0.5, 0, 3)).toThrow('Degrees of freedom are above 0, got 0 and 3.');
    expect(() => fQuantile(0.5, 2, Infinity)).toThrow(RangeError);
  });
});
