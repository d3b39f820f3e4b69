import { deviation } from 'd3-array';
import { requireFinite } from './requireFinite';

/**
 * Standard error of measurement (SEM) from how much people differ and how reliably they are distinguished:
 * SEM = SD sqrt(1 - ICC).
 *
 * @param sd  standard deviation between people, any unit, 0 or above
 * @param icc  intraclass correlation, at most 1; below 0, which means no agreement at all, counts as 0
 * @returns  in the unit of sd, 0 to sd
 * @throws  RangeError where sd is below 0 or icc above 1
 * Source:  Weir 2005, J Strength Cond Res 19:231 (from memory)
 */
export function standardErrorFromIcc(sd: number, icc: number): number {
  if (!(sd >= 0 && sd < Infinity)) throw new RangeError(`A standard deviation is 0 or above, got ${sd}.`);
  if (!(icc <= 1)) throw new RangeError(`An intraclass correlation is at most 1, got ${icc}.`);
  return sd * Math.sqrt(1 - Math.max(0, icc));
}

/**
 * Standard error of measurement (SEM) from measuring the same things twice: SEM = SD of the differences / sqrt 2.
 *
 * @param first  one a person or repetition, any unit
 * @param second  the same again, in the same order
 * @returns  in the unit of the values, 0 or above; a difference that all share does not count
 * Missing: null below two pairs
 * @throws  RangeError where the two differ in length, or a value is not a finite number
 * Source:  Bland & Altman 1996, BMJ 313:744 (from memory)
 */
export function standardErrorFromPairs(first: readonly number[], second: readonly number[]): number | null {
  if (first.length !== second.length) {
    throw new RangeError(`Pairs need as many values twice, got ${first.length} and ${second.length}.`);
  }
  requireFinite([...first, ...second]);
  const sd = deviation(first.map((value, i) => second[i]! - value));
  return sd === undefined ? null : sd / Math.SQRT2;
}
