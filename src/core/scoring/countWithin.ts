import type { Curve } from '../measurement/curve';
import type { MeasuredRepetition } from '../measurement/measurement';
import type { LimitEnd } from '../measures/limitEnd';

/**
 * Counts the samples of a repetition's loaded time in which a measure has a value, and of those the ones within its
 * limits; a value exactly at a limit is within.
 */
export function countWithin(
  { loadedFrom, loadedTo }: Pick<MeasuredRepetition, 'loadedFrom' | 'loadedTo'>,
  { values, missing }: Curve,
  { least, most }: Record<LimitEnd, number>,
): { measured: number; within: number } {
  let measured = 0;
  let within = 0;
  for (let i = loadedFrom; i <= loadedTo; i++) {
    if (missing[i] !== 0) continue;
    measured++;
    if (values[i]! <= most && values[i]! >= least) within++;
  }
  return { measured, within };
}
