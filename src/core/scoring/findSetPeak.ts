import { mean, median } from 'd3-array';
import type { MeasuredRepetition } from '../measurement/measurement';
import { sharedBand, type Extreme } from '../measurement/measureRange';
import { spreadBetween } from '../statistics/spreadBetween';
import { ninetyPercent } from '../view/errorBand';

/** Fewer measured repetitions than this say nothing of a set: published values average three to five trials. */
export const fewestRepetitions = 3;

/** The usual peak of a set: the mean over its repetitions of the knee's largest inward angle. */
export interface SetPeak {
  /** Degrees, inward positive. */
  meanDeg: number;
  /** Repetitions that were measured. */
  count: number;
  /**
   * Standard error of measurement, degrees: what repetitions share of their bands, as one standard deviation, and their
   * scatter, which their number evens out. The scatter holds their own errors.
   */
  semDeg: number;
}

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
  const sharedSd = median(peaks, (peak) => sharedBand(peak))! / ninetyPercent;
  return {
    meanDeg: mean(peaks, ({ value }) => value)!,
    count: peaks.length,
    semDeg: Math.hypot(sharedSd, sd / Math.sqrt(peaks.length)),
  };
}
