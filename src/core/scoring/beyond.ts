import type { LimitEnd } from '../measures/limitEnd';
import type { EndLimits } from '../protocol/limits';

/** How far a value is beyond one of its limits, negative within; -Infinity where there is none. */
export function beyond(end: LimitEnd, value: number, { least, most }: EndLimits): number {
  if (end === 'least') return least === undefined ? -Infinity : least - value;
  return most === undefined ? -Infinity : value - most;
}
