import { describe, expect, it } from 'vitest';
import { meanChange } from '#core/change/meanChange';
import { betweenDaysSemDeg } from '#core/change/publishedSem';
import { detectableChange95 } from '#core/statistics/detectableChange';

const times = (count: number, value: number) => Array<number>(count).fill(value);
/** The table below is rounded to 0.01. */
const rounded = 2;

describe('meanChange(earlier, later, sem)', () => {
  // 1.96 x 3.01 = 5.8996; times sqrt 2, sqrt 1, sqrt 2/3, sqrt 1/2, sqrt 4/3.
  it.each([
    [1, 1, 8.34],
    [2, 2, 5.9],
    [3, 3, 4.82],
    [4, 4, 4.17],
    [3, 1, 6.81],
  ])('with %d and %d sets tells %d degrees', (m1, m2, detectable) => {
    const change = meanChange(times(m1, 9), times(m2, 8), betweenDaysSemDeg);
    expect(change.detectable).toBeCloseTo(detectable, rounded);
  });

  it('with one set each tells what Munro 2012 calls the smallest detectable difference', () => {
    expect(meanChange([1], [2], betweenDaysSemDeg).detectable).toBeCloseTo(
      detectableChange95(betweenDaysSemDeg),
      12,
    );
  });

  it('tells 13.2 to 7.9 with three sets each, and not with one', () => {
    // 7.9 - 13.2 = -5.3; 4.82 < 5.3 < 8.34.
    const three = meanChange([12.2, 13.9, 13.5], [7.1, 8.3, 8.3], betweenDaysSemDeg);
    expect(three.earlier).toEqual({ mean: expect.closeTo(13.2, 9) as number, count: 3 });
    expect(three.difference).toBeCloseTo(-5.3, 9);
    expect(three.verdict).toBe('lower');
    expect(meanChange([13.2], [7.9], betweenDaysSemDeg).verdict).toBe('within-error');
  });

  it('with an error of 3.9 tells neither 5.3 with one set nor with three', () => {
    // 1.96 x 3.9 x sqrt 2 = 10.81; x sqrt 2/3 = 6.24.
    expect(meanChange([13.2], [7.9], 3.9).detectable).toBeCloseTo(10.81, rounded);
    const three = meanChange(times(3, 13.2), times(3, 7.9), 3.9);
    expect(three.detectable).toBeCloseTo(6.24, rounded);
    expect(three.verdict).toBe('within-error');
  });

  it('turns its sign with the order', () => {
    expect(meanChange([2], [30], 1)).toMatchObject({ difference: 28, verdict: 'higher' });
    expect(meanChange([30], [2], 1)).toMatchObject({ difference: -28, verdict: 'lower' });
  });

  it('refuses an empty group, what is not a number and an error below 0', () => {
    expect(() => meanChange([], [1], 3)).toThrow('got 0 and 1');
    expect(() => meanChange([1], [NaN], 3)).toThrow('got NaN');
    expect(() => meanChange([1], [2], -3)).toThrow(RangeError);
  });
});
