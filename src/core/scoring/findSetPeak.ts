import { mean, median } from 'd3-array';
import type { MeasuredRepetition } from '../measurement/measurement';
import type { Extreme } from '../measurement/measureRange';
import { spreadBetween } from '../statistics/spreadBetween';

/** Fewer measured repetitions than this say nothing of a set: published values average three to five trials. */
export const fewestRepetitions = 3;

/** The usual peak of a set: the mean over its repetitions of the knee's largest inward angle. */
export interface SetPeak {
  /** Degrees, inward positive. */
  meanDeg: number;
  /** Repetitions that were measured. */
  count: number;
  /**
   * Standard error of measurement, degrees: what a repetition's band comes to as one standard deviation, since what is
   * off about a view or a figure is off in every repetition, and the scatter of the repetitions, which their number evens out.
   */
  semDeg: number;
}

/** From the half-width that holds nine of ten normal errors to one standard deviation. */
const ninetyPercent = 1.645;

type PeakRepetition = Pick<MeasuredRepetition, 'completeness'> & {
  ranges: { 'knee-angle': { max?: Extreme | null | undefined } };
};

/**
 * @returns  null below three complete repetitions with an angle
 * Source:  means of repeated trials as in Munro 2012, J Sport Rehabil 21:7
 */
export function findSetPeak(repetitions: readonly PeakRepetition[]): SetPeak | null {
  const peaks = repetitions.flatMap(({ completeness, ranges }) => {
    const { max } = ranges['knee-angle'];
    return completeness === 'complete' && max ? [max] : [];
  });
  if (peaks.length < fewestRepetitions) return null;
  const { sd } = spreadBetween(peaks.map(({ value }) => value))!;
  const bandSd = median(peaks, ({ band }) => band)! / ninetyPercent;
  return {
    meanDeg: mean(peaks, ({ value }) => value)!,
    count: peaks.length,
    semDeg: Math.hypot(bandSd, sd / Math.sqrt(peaks.length)),
  };
}
