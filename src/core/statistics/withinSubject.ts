import { mean, sum } from 'd3-array';
import { chiSquareQuantile } from './chiSquareQuantile';
import { requireFinite } from './requireFinite';

export interface WithinSubject {
  /** Pairs, which are also the degrees of freedom. */
  count: number;
  /** Within-subject standard deviation, the standard error of measurement of one value. */
  sd: number;
  /** 95 % confidence interval of it. */
  low: number;
  high: number;
  /** One-sided: it is below this with 95 % confidence. */
  upper: number;
  /** Mean of second - first. */
  bias: number;
}

/**
 * How far off one measurement is, from measuring the same things twice: sqrt(sum d^2 / 2n).
 *
 * Unlike `standardErrorFromPairs`, a shift that all pairs share counts: somebody who is filmed once does not know on
 * which side of it they are.
 *
 * @param first  one a pair, any unit
 * @param second  the same again, in the same order
 * @returns  in the unit of the values; the interval is that of a variance with n degrees of freedom, for normal errors
 * Missing: null without pairs
 * @throws  RangeError where the two differ in length, or a value is not a finite number
 * Source:  Bland & Altman 1996, BMJ 313:744 (from memory)
 */
export function withinSubject(first: readonly number[], second: readonly number[]): WithinSubject | null {
  if (first.length !== second.length)
    throw new RangeError(`Pairs need as many values twice, got ${first.length} and ${second.length}.`);
  requireFinite([...first, ...second]);
  const count = first.length;
  if (count === 0) return null;
  const differences = first.map((value, i) => second[i]! - value);
  const sd = Math.sqrt(sum(differences, (difference) => difference ** 2) / (2 * count));
  const bound = (probability: number) => sd * Math.sqrt(count / chiSquareQuantile(probability, count));
  return {
    count,
    sd,
    low: bound(0.975),
    high: bound(0.025),
    upper: bound(0.05),
    bias: mean(differences)!,
  };
}
