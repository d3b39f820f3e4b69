import { describe, expect, it } from 'vitest';
import { standardErrorFromIcc, standardErrorFromPairs } from '#core/statistics/standardError';

describe('standardErrorFromIcc(sd, icc)', () => {
  it('is the share of the spread that is not between people', () => {
    // 5 x sqrt(1 - 0.84) = 5 x 0.4 = 2.
    expect(standardErrorFromIcc(5, 0.84)).toBeCloseTo(2, 12);
  });

  it('is 0 for perfect agreement and the whole spread for none or worse', () => {
    expect(standardErrorFromIcc(6.2, 1)).toBe(0);
    expect(standardErrorFromIcc(6.2, 0)).toBe(6.2);
    expect(standardErrorFromIcc(6.2, -0.3)).toBe(6.2);
  });

  it.each([
    [-1, 0.5],
    [NaN, 0.5],
    [Infinity, 0.5],
    [4, 1.01],
    [4, NaN],
  ])('refuses a spread of %d with an ICC of %d', (sd, icc) => {
    expect(() => standardErrorFromIcc(sd, icc)).toThrow(RangeError);
  });
});

describe('standardErrorFromPairs(first, second)', () => {
  it('is the spread of the differences over the root of two', () => {
    // Differences 1, 4, 7, 0: SD sqrt 10; sqrt 10 / sqrt 2 = sqrt 5.
    expect(standardErrorFromPairs([9, 21, 32, 6], [10, 25, 39, 6])).toBeCloseTo(Math.sqrt(5), 12);
  });

  it('ignores a difference that all share', () => {
    expect(standardErrorFromPairs([4, 9, 2], [7, 12, 5])).toBe(0);
  });

  it('is null below two pairs', () => {
    expect(standardErrorFromPairs([3], [4])).toBeNull();
  });

  it('refuses unpaired values and what is not a number', () => {
    expect(() => standardErrorFromPairs([1], [2, 3])).toThrow('got 1 and 2');
    expect(() => standardErrorFromPairs([1, NaN], [2, 3])).toThrow('got NaN');
  });
});
