import { deviation, mean } from 'd3-array';
import { requireFinite } from './requireFinite';
import { studentQuantile95 } from './studentQuantile';

/** From low to high, in the unit of the values. */
export interface Interval {
  low: number;
  high: number;
}

export interface Agreement {
  count: number;
  /** Mean of first - second ('bias'). */
  meanDifference: number;
  /** Sample standard deviation of the differences. */
  sdOfDifferences: number;
  /** 95 % of differences are between these where they are normally distributed: mean -+ 1.96 SD. */
  lowerLimit: number;
  upperLimit: number;
  /** Standard errors of the mean, SD / sqrt n, and of each limit, SD sqrt(1 / n + 1.96^2 / 2(n - 1)). */
  standardErrorOfMean: number;
  standardErrorOfLimits: number;
  /** 95 % confidence intervals, by Student's t with n - 1 degrees of freedom. */
  ofMean: Interval;
  ofLowerLimit: Interval;
  ofUpperLimit: Interval;
}

/**
 * How well two ways of measuring agree.
 *
 * @param first  one a thing measured, any unit
 * @param second  the same things, measured the other way, in the same order
 * @returns  all in the unit of the values
 * Sign:    positive = the first way reads higher
 * Missing: null below two pairs
 * @throws  RangeError where the two differ in length, or a value is not a finite number
 * Source:  Bland & Altman 1986, Lancet 1:307; they round 1.96 to 2. The error of a limit: Bland & Altman 1999, Stat
 *   Methods Med Res 8:135 (from memory); that of 1986, SD sqrt(3 / n), is too small for few pairs
 */
export function blandAltman(first: readonly number[], second: readonly number[]): Agreement | null {
  if (first.length !== second.length) {
    throw new RangeError(`Pairs need as many values twice, got ${first.length} and ${second.length}.`);
  }
  requireFinite([...first, ...second]);
  const count = first.length;
  if (count < 2) return null;
  const differences = first.map((value, i) => value - second[i]!);
  const meanDifference = mean(differences)!;
  const sdOfDifferences = deviation(differences)!;
  const lowerLimit = meanDifference - 1.96 * sdOfDifferences;
  const upperLimit = meanDifference + 1.96 * sdOfDifferences;
  const standardErrorOfMean = sdOfDifferences / Math.sqrt(count);
  const standardErrorOfLimits = sdOfDifferences * Math.sqrt(1 / count + 1.96 ** 2 / (2 * (count - 1)));
  const t = studentQuantile95(count - 1);
  const around = (value: number, error: number) => ({ low: value - t * error, high: value + t * error });
  return {
    count,
    meanDifference,
    sdOfDifferences,
    lowerLimit,
    upperLimit,
    standardErrorOfMean,
    standardErrorOfLimits,
    ofMean: around(meanDifference, standardErrorOfMean),
    ofLowerLimit: around(lowerLimit, standardErrorOfLimits),
    ofUpperLimit: around(upperLimit, standardErrorOfLimits),
  };
}
