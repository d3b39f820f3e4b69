/**
 * Smallest change between two measurements that is not measurement error, with 95 % confidence:
 * MDC95 = 1.96 sqrt(2) SEM.
 *
 * @param sem  standard error of measurement, any unit, 0 or above
 * @returns  in the unit of sem
 * @throws  RangeError where sem is below 0 or not a finite number
 * Source:  Munro 2012, J Sport Rehabil 21:7, calls the same the smallest detectable difference
 */
export function detectableChange95(sem: number): number {
  if (!(sem >= 0 && sem < Infinity)) throw new RangeError(`A standard error is 0 or above, got ${sem}.`);
  return 1.96 * Math.SQRT2 * sem;
}

export interface Change {
  /** later - earlier, in the unit of the values. */
  difference: number;
  /** Whether that is more than error; 'within-error' does not mean that nothing changed. */
  verdict: 'within-error' | 'higher' | 'lower';
}

/**
 * Whether two sessions differ by more than measurement error.
 *
 * @param earlier  value of one session, any unit
 * @param later  the same value of another session
 * @param mdc  smallest detectable change in that unit, 0 or above
 * Sign:    'higher' = later is above earlier by more than mdc; a difference of exactly mdc is within error
 * @throws  RangeError where a value is not a finite number or mdc is below 0
 */
export function changeBeyondError(earlier: number, later: number, mdc: number): Change {
  const difference = later - earlier;
  if (!Number.isFinite(difference)) {
    throw new RangeError(`A change needs two finite numbers, got ${earlier} and ${later}.`);
  }
  if (!(mdc >= 0 && mdc < Infinity)) throw new RangeError(`A detectable change is 0 or above, got ${mdc}.`);
  if (Math.abs(difference) <= mdc) return { difference, verdict: 'within-error' };
  return { difference, verdict: difference > 0 ? 'higher' : 'lower' };
}
