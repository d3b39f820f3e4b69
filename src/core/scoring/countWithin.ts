import type { MeasuredRepetition, Measurement } from '../measurement/measurement';
import type { Limits } from '../protocol/limits';

/**
 * Counts the samples of a repetition's loaded time in which the knee projection angle was measured, and of those the
 * ones within the limits; an angle exactly at a limit is within.
 */
export function countWithin(
  { loadedFrom, loadedTo }: Pick<MeasuredRepetition, 'loadedFrom' | 'loadedTo'>,
  { values, missing }: Measurement['kneeAngleDeg'],
  { kneeInwardDeg, kneeOutwardDeg }: Limits,
): { measured: number; within: number } {
  let measured = 0;
  let within = 0;
  for (let i = loadedFrom; i <= loadedTo; i++) {
    if (missing[i] !== 0) continue;
    measured++;
    if (values[i]! <= kneeInwardDeg && values[i]! >= -kneeOutwardDeg) within++;
  }
  return { measured, within };
}
