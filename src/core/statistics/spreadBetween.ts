import { deviation, max, mean, min } from 'd3-array';
import { requireFinite } from './requireFinite';

export interface Spread {
  count: number;
  mean: number;
  /** Sample standard deviation (divided by count - 1), in the unit of the values. */
  sd: number;
  min: number;
  max: number;
}

/**
 * Spread of the repetitions of a set.
 *
 * @param values  one a repetition, any unit
 * @returns  in the unit of the values; sd 0 where all are alike
 * Missing: null below two values, which have no spread
 * @throws  RangeError where a value is not a finite number
 */
export function spreadBetween(values: readonly number[]): Spread | null {
  requireFinite(values);
  if (values.length < 2) return null;
  return {
    count: values.length,
    mean: mean(values)!,
    sd: deviation(values)!,
    min: min(values)!,
    max: max(values)!,
  };
}
