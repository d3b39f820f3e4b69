import { curveValue } from '../measurement/curve';
import type { MeasuredRepetition, Measurement } from '../measurement/measurement';
import type { Extreme } from '../measurement/measureRange';
import { bandAt } from './bandAt';

/**
 * The knee angle at the deepest point of a repetition: most published values are read there, not where the angle is
 * largest.
 *
 * @returns  degrees, inward positive, with its time; null where the depth or the angle there was not measured, as on a seat
 * Source:   Herrington 2014 reads the frame of the deepest bend
 */
export function kneeAtDeepest(
  measurement: Pick<Measurement, 'curves' | 'repetitions'>,
  { ranges }: Pick<MeasuredRepetition, 'ranges'>,
): Extreme | null {
  const deepest = ranges.depth.max;
  if (deepest === null) return null;
  const { sample, timeMs } = deepest;
  const value = curveValue(measurement.curves['knee-angle'], sample);
  const band = value === null ? null : bandAt(measurement, sample, value >= 0 ? 'most' : 'least');
  return value === null || band === null ? null : { value, band, sample, timeMs };
}
