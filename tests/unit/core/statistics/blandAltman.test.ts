import { describe, expect, it } from 'vitest';
import { blandAltman } from '#core/statistics/blandAltman';

/** Bland & Altman 1986, table 1: peak expiratory flow of 17 people by two meters, l/min. */
const largeMeter = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427];
const miniMeter = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451];

describe('blandAltman(first, second)', () => {
  it('gives the bias and spread that Bland & Altman print for their data', () => {
    const { count, meanDifference, sdOfDifferences } = blandAltman(largeMeter, miniMeter)!;
    expect(count).toBe(17);
    expect(meanDifference).toBeCloseTo(-2.1, 1);
    expect(sdOfDifferences).toBeCloseTo(38.8, 1);
  });

  it('gives limits around the bias, with standard errors', () => {
    // Differences 1, 4, 7, 0: mean 3, SD sqrt((4 + 1 + 16 + 9) / 3) = sqrt 10 = 3.16228.
    const agreement = blandAltman([10, 25, 39, 6], [9, 21, 32, 6])!;
    expect(agreement.meanDifference).toBe(3);
    expect(agreement.sdOfDifferences).toBeCloseTo(3.16228, 5);
    // 3 -+ 1.96 x 3.16228 = 3 -+ 6.19806; 3.16228 / 2 = 1.58114; 3.16228 x sqrt(3 / 4) = 2.73861.
    expect(agreement.lowerLimit).toBeCloseTo(-3.19806, 4);
    expect(agreement.upperLimit).toBeCloseTo(9.19806, 4);
    expect(agreement.standardErrorOfMean).toBeCloseTo(1.58114, 5);
    expect(agreement.standardErrorOfLimits).toBeCloseTo(2.73861, 5);
  });

  it('changes its sign when the two methods are swapped', () => {
    const [one, other] = [blandAltman(largeMeter, miniMeter)!, blandAltman(miniMeter, largeMeter)!];
    expect(other.meanDifference).toBe(-one.meanDifference);
    expect(other.sdOfDifferences).toBeCloseTo(one.sdOfDifferences, 12);
    expect(other.upperLimit).toBeCloseTo(-one.lowerLimit, 12);
  });

  it('has no spread where the methods differ by a constant', () => {
    expect(blandAltman([5, 8, 13], [3, 6, 11])).toMatchObject({
      meanDifference: 2,
      sdOfDifferences: 0,
      lowerLimit: 2,
      upperLimit: 2,
    });
  });

  it('is null below two pairs', () => {
    expect(blandAltman([], [])).toBeNull();
    expect(blandAltman([4], [5])).toBeNull();
  });

  it('refuses unpaired values and what is not a number', () => {
    expect(() => blandAltman([1, 2, 3], [4, 5])).toThrow(
      new RangeError('Pairs need as many values twice, got 3 and 2.'),
    );
    expect(() => blandAltman([1, 2], [3, Infinity])).toThrow(RangeError);
  });
});
