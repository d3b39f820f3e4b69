import { mean } from 'd3-array';
import { changeBeyondError, type Change } from '../statistics/detectableChange';
import { requireFinite } from '../statistics/requireFinite';

export interface MeanChange extends Change {
  earlier: { mean: number; count: number };
  later: { mean: number; count: number };
  /** Smallest difference of these means that is not measurement error, with 95 % confidence. */
  detectable: number;
}

/**
 * Whether the means of two groups of sets differ by more than measurement error: 1.96 SEM sqrt(1/m1 + 1/m2).
 *
 * @param earlier  one value a set, any unit, at least one; each of a day of its own
 * @param later  the same, of later days
 * @param sem  standard error of measurement of one set between days, same unit, 0 or above
 * Sign:    'higher' = the later mean is above the earlier one by more than error
 * @throws  RangeError where a group is empty, or a value is not a finite number
 * Source:  standard error of a mean; with one set each it is the smallest detectable difference of Munro 2012.
 *   Errors that all days share, such as those of a body or of clothes, would cancel; they are not taken off
 */
export function meanChange(earlier: readonly number[], later: readonly number[], sem: number): MeanChange {
  if (earlier.length === 0 || later.length === 0)
    throw new RangeError(`A change needs sets of both times, got ${earlier.length} and ${later.length}.`);
  requireFinite([...earlier, ...later, sem]);
  const [then, now] = [mean(earlier)!, mean(later)!];
  const detectable = 1.96 * sem * Math.sqrt(1 / earlier.length + 1 / later.length);
  return {
    ...changeBeyondError(then, now, detectable),
    earlier: { mean: then, count: earlier.length },
    later: { mean: now, count: later.length },
    detectable,
  };
}
