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

  it('gives the interval of the bias that Bland & Altman print for their data', () => {
    const { ofMean, ofLowerLimit, standardErrorOfMean, standardErrorOfLimits } = blandAltman(
      largeMeter,
      miniMeter,
    )!;
    expect(standardErrorOfMean).toBeCloseTo(9.4, 1);
    // They start from -2.1 and 2.12 x 9.4 (printed: -22.0 to 17.8), so the last digit may differ.
    expect(Math.abs(ofMean.low + 22)).toBeLessThan(0.15);
    expect(Math.abs(ofMean.high - 17.8)).toBeLessThan(0.15);
    // They print 16.3 for the error of a limit, by sqrt(3 / n): 38.76 sqrt(3 / 17). By 1999's formula 16.5.
    expect(standardErrorOfLimits).toBeCloseTo(38.76 * Math.sqrt(1 / 17 + 3.8416 / 32), 1);
    expect(ofLowerLimit.high - ofLowerLimit.low).toBeCloseTo(2 * 2.12 * standardErrorOfLimits, 1);
  });

  it('gives limits around the bias, with standard errors', () => {
    // Differences 1, 4, 7, 0: mean 3, SD sqrt((4 + 1 + 16 + 9) / 3) = sqrt 10 = 3.16228.
    const agreement = blandAltman([10, 25, 39, 6], [9, 21, 32, 6])!;
    expect(agreement.meanDifference).toBe(3);
    expect(agreement.sdOfDifferences).toBeCloseTo(3.16228, 5);
    // 3 -+ 1.96 x 3.16228 = 3 -+ 6.19806; 3.16228 / 2 = 1.58114; 3.16228 x sqrt(1 / 4 + 3.8416 / 6) = 2.98373.
    // t with 3 degrees of freedom 3.18245: 3 -+ 5.03190, and 6.19806 + 3 + 9.49562 for the far end of the upper limit.
    expect(agreement.lowerLimit).toBeCloseTo(-3.19806, 4);
    expect(agreement.upperLimit).toBeCloseTo(9.19806, 4);
    expect(agreement.standardErrorOfMean).toBeCloseTo(1.58114, 5);
    expect(agreement.standardErrorOfLimits).toBeCloseTo(2.98373, 5);
    expect(agreement.ofMean.low).toBeCloseTo(-2.0319, 3);
    expect(agreement.ofMean.high).toBeCloseTo(8.0319, 3);
    expect(agreement.ofUpperLimit.high).toBeCloseTo(18.6937, 3);
    expect(agreement.ofLowerLimit.low).toBeCloseTo(-12.6937, 3);
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
