import { describe, expect, it } from 'vitest';
import { painChange } from '#core/change/painChange';

describe('painChange(earlier, later)', () => {
  it.each([
    // Medians 6 and 3.
    [[6, 7, 5], [3, 3, 8], -3, 'beyond-error'],
    [[3], [1], -2, 'important'],
    [[2, 2], [4, 4], 2, 'important'],
    // 2.5 - 4 = -1.5.
    [[4], [2, 3], -1.5, 'small'],
    [[0], [0], 0, 'small'],
    [[1], [9], 8, 'beyond-error'],
  ])('from %j to %j: %d, %s', (earlier, later, difference, size) => {
    expect(painChange(earlier, later)).toMatchObject({ difference, size });
  });

  it('takes one point, up or down, for small', () => {
    for (let pain = 0; pain < 10; pain++) expect(painChange([pain], [pain + 1]).size).toBe('small');
  });

  it('refuses a time without answers, and what is no pain', () => {
    expect(() => painChange([], [3])).toThrow(RangeError);
    expect(() => painChange([3], [11])).toThrow('got 11');
    expect(() => painChange([NaN], [1])).toThrow('got NaN');
  });
});
