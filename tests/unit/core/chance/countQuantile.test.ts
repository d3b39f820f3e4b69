import { describe, expect, it } from 'vitest';
import { countQuantile } from '#core/chance/countQuantile';

describe('countQuantile(countChances, share)', () => {
  it('is the first count up to which the share is reached', () => {
    // Up to 0, 1, 2, 3: .04 .3 .96 1.
    const chances = [0.04, 0.26, 0.66, 0.04];
    expect([0.03, 0.05, 0.5, 0.95, 0.97].map((share) => countQuantile(chances, share))).toEqual([
      0, 1, 2, 2, 3,
    ]);
  });

  it('is reached by a share exactly, however its parts are rounded', () => {
    // Eight times .1, added one by one, is .7999999999999999.
    expect(countQuantile(Array<number>(10).fill(0.1), 0.8)).toBe(7);
  });

  it('reaches the last count with all', () => {
    expect(countQuantile([0.5, 0.5 - 1e-12], 1)).toBe(1);
    expect(countQuantile([0, 0, 1], 0.05)).toBe(2);
  });
});
