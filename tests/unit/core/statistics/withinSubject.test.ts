import { describe, expect, it } from 'vitest';
import { standardErrorFromPairs } from '#core/statistics/standardError';
import { withinSubject } from '#core/statistics/withinSubject';

/**
 * Peak flow of 17 people, measured twice with each of two meters, l/min: Bland & Altman 1986, Lancet 1:307, table 1
 * (from memory).
 */
const large = [
  [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427],
  [490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421],
] as const;
const mini = [
  [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451],
  [525, 415, 508, 444, 500, 625, 460, 390, 642, 432, 420, 605, 227, 467, 268, 370, 443],
] as const;
/** The paper rounds to 0.1. */
const rounded = 0.05;

describe('withinSubject(first, second)', () => {
  it('agrees with the repeatability that Bland & Altman 1986 give', () => {
    // They take the SD of the differences about 0, sqrt 2 times ours: 43.2 / 2 = 21.6 and 56.4 / 2 = 28.2 (from memory).
    expect(Math.abs(Math.SQRT2 * withinSubject(...large)!.sd - 21.6)).toBeLessThan(rounded);
    expect(Math.abs(Math.SQRT2 * withinSubject(...mini)!.sd - 28.2)).toBeLessThan(rounded);
  });

  it('has the interval and the bound of five pairs', () => {
    // d = 1.3, -.9, -2.5, 1.5, -.8: squares 1.69 + .81 + 6.25 + 2.25 + .64 = 11.64; sqrt 1.164 = 1.0789.
    // Chi-square of 5: 12.8325, .8312 and 1.1455; sqrt(5 / each) = .6242, 2.4526, 2.0893.
    const found = withinSubject([9.1, 7.8, 11.2, 6.5, 10.0], [10.4, 6.9, 8.7, 8.0, 9.2])!;
    expect(found).toEqual({
      count: 5,
      sd: expect.closeTo(1.0789, 4) as number,
      low: expect.closeTo(0.6735, 4) as number,
      high: expect.closeTo(2.6461, 4) as number,
      upper: expect.closeTo(2.2541, 4) as number,
      bias: expect.closeTo(-0.28, 9) as number,
    });
  });

  it.each([
    [2, 4.42],
    [3, 2.92],
    [5, 2.09],
    [10, 1.59],
    [20, 1.36],
  ])('has an upper bound of the error, with %d pairs of %d times it', (count, factor) => {
    const pairs = Array<number>(count).fill(1);
    const { upper, sd } = withinSubject(
      pairs,
      pairs.map(() => 2),
    )!;
    expect(upper / sd).toBeCloseTo(factor, 2);
  });

  it('counts a shift that all share, which the SD of differences does not', () => {
    // Differences 1, 4, 7, 0: 66 / 8 = 8.25, its root 2.872; their SD over sqrt 2 is 2.236.
    const [first, second] = [
      [9, 21, 32, 6],
      [10, 25, 39, 6],
    ] as const;
    expect(withinSubject(first, second)!.sd).toBeCloseTo(2.872, 3);
    expect(standardErrorFromPairs(first, second)).toBeCloseTo(2.236, 3);
  });

  it('is null without pairs, and refuses unpaired values and what is not a number', () => {
    expect(withinSubject([], [])).toBeNull();
    expect(() => withinSubject([1], [2, 3])).toThrow('got 1 and 2');
    expect(() => withinSubject([NaN], [2])).toThrow('got NaN');
  });
});
