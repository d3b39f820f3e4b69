import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeBeyondError, detectableChange95 } from '#core/statistics/detectableChange';
import { standardErrorFromPairs } from '#core/statistics/standardError';

describe('detectableChange95(sem)', () => {
  it('gives the smallest difference that Munro 2012 prints for the smallest standard error', () => {
    // 1.96 x 1.41421 x 2.72 = 7.5394.
    expect(detectableChange95(2.72).toFixed(2)).toBe('7.54');
  });

  it('gives less than the largest difference that Munro 2012 prints for the largest standard error', () => {
    // 1.96 x 1.41421 x 3.01 = 8.3432, where 8.93 is printed: that would take an SEM of 8.93 / 2.77186 = 3.22.
    // The two ends of the printed ranges (2.72-3.01 and 7.54-8.93) so can't both belong to one test and this formula.
    expect(detectableChange95(3.01).toFixed(2)).toBe('8.34');
    expect(detectableChange95(3.22).toFixed(2)).toBe('8.93');
  });

  it('is 1.96 times the spread of repeated differences', () => {
    // Differences 1, 4, 7, 0: SD sqrt 10.
    const sem = standardErrorFromPairs([9, 21, 32, 6], [10, 25, 39, 6])!;
    expect(detectableChange95(sem)).toBeCloseTo(1.96 * Math.sqrt(10), 12);
  });

  it('is 0 without error', () => {
    expect(detectableChange95(0)).toBe(0);
  });

  it.each([-0.1, NaN, Infinity])('refuses a standard error of %d', (sem) => {
    expect(() => detectableChange95(sem)).toThrow(
      new RangeError(`A standard error is 0 or above, got ${sem}.`),
    );
  });
});

describe('changeBeyondError(earlier, later, mdc)', () => {
  it.each([
    [16, 7, 8, -9, 'lower'],
    [16, 8, 8, -8, 'within-error'],
    [5, 5, 8, 0, 'within-error'],
    [-4, 4, 8, 8, 'within-error'],
    [-4, 4.5, 8, 8.5, 'higher'],
    [3, 3, 0, 0, 'within-error'],
    [3, 3.25, 0, 0.25, 'higher'],
  ])('classifies %d, then %d, with an error of %d: %d is %s', (earlier, later, mdc, difference, verdict) => {
    expect(changeBeyondError(earlier, later, mdc)).toEqual({ difference, verdict });
  });

  it('gives the opposite when the sessions are swapped', () => {
    const opposite = { higher: 'lower', lower: 'higher', 'within-error': 'within-error' } as const;
    const degs = fc.integer({ min: -40, max: 40 });
    fc.assert(
      fc.property(degs, degs, fc.integer({ min: 0, max: 12 }), (a, b, mdc) => {
        const [there, back] = [changeBeyondError(a, b, mdc), changeBeyondError(b, a, mdc)];
        expect(back.verdict).toBe(opposite[there.verdict]);
        expect(back.difference + there.difference).toBe(0);
      }),
    );
  });

  it.each([
    [NaN, 3, 8],
    [3, Infinity, 8],
    [3, 4, -1],
    [3, 4, NaN],
  ])('refuses %d, then %d, with an error of %d', (earlier, later, mdc) => {
    expect(() => changeBeyondError(earlier, later, mdc)).toThrow(RangeError);
  });
});
