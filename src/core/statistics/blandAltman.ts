import { deviation, mean } from 'd3-array';
import { requireFinite } from './requireFinite';

export interface Agreement {
  count: number;
  /** Mean of first - second ('bias'). */
  meanDifference: number;
  /** Sample standard deviation of the differences. */
  sdOfDifferences: number;
  /** 95 % of differences are between these where they are normally distributed: mean -+ 1.96 SD. */
  lowerLimit: number;
  upperLimit: number;
  /** Standard errors of the mean, SD / sqrt n, and of each limit, about SD sqrt(3 / n). */
  standardErrorOfMean: number;
  standardErrorOfLimits: number;
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
 * Source:  Bland & Altman 1986, Lancet 1:307; they round 1.96 to 2
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
  return {
    count,
    meanDifference,
    sdOfDifferences,
    lowerLimit: meanDifference - 1.96 * sdOfDifferences,
    upperLimit: meanDifference + 1.96 * sdOfDifferences,
    standardErrorOfMean: sdOfDifferences / Math.sqrt(count),
    standardErrorOfLimits: sdOfDifferences * Math.sqrt(3 / count),
  };
}
