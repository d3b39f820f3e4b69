import { describe, expect, it } from 'vitest';
import { spreadBetween } from '#core/statistics/spreadBetween';

describe('spreadBetween(values)', () => {
  it('gives mean, sample standard deviation and range', () => {
    // 4, 9, 11, 16: mean 10, squares 36 + 1 + 1 + 36 = 74, sqrt(74 / 3) = 4.96655.
    const spread = spreadBetween([4, 16, 9, 11])!;
    expect(spread).toMatchObject({ count: 4, mean: 10, min: 4, max: 16 });
    expect(spread.sd).toBeCloseTo(4.96655, 5);
  });

  it('is 0 where all repetitions are alike', () => {
    expect(spreadBetween([7.5, 7.5, 7.5])).toEqual({ count: 3, mean: 7.5, sd: 0, min: 7.5, max: 7.5 });
  });

  it('keeps its size when all values are shifted or mirrored', () => {
    const { sd } = spreadBetween([2, 3, 8])!;
    expect(spreadBetween([-98, -97, -92])!.sd).toBeCloseTo(sd, 12);
    expect(spreadBetween([-2, -3, -8])!.sd).toBeCloseTo(sd, 12);
  });

  it('is null below two repetitions', () => {
    expect(spreadBetween([])).toBeNull();
    expect(spreadBetween([12])).toBeNull();
  });

  it('refuses what is not a number', () => {
    expect(() => spreadBetween([1, NaN])).toThrow(new RangeError('Statistics need finite numbers, got NaN.'));
  });
});
