import type { MissingReason } from '../measurement/curve';
import type { Extreme, MeasuredRepetition, Measurement } from '../measurement/measurement';
import type { Limits } from '../protocol/limits';
import { countWithin } from './countWithin';

export const verdicts = ['in-line', 'near-limit', 'out-of-line', 'not-measured'] as const;
export type Verdict = (typeof verdicts)[number];
export type Direction = 'inward' | 'outward';

/** With a wider error band than this to either side, nothing is said of a repetition, degrees. */
export const widestBandDeg = 12;

/** With less of the loaded time measured than this share, nothing is said of a repetition. */
export const leastMeasuredShare = 1 / 3;

export interface Judgement {
  verdict: Verdict;
  /** Why there is no verdict; null where there is one. */
  reason: MissingReason | null;
  /** The way in which the knee came closest to, or went farthest beyond, its limit; null where not measured. */
  direction: Direction | null;
  /** Knee projection angle at that moment, degrees, inward positive. */
  worst: Extreme | null;
  /** Share of the measured loaded time in which the knee was within its limits, 0 to 100 %; null where not measured. */
  alignmentScorePct: number | null;
}

/**
 * Judges one repetition against limits.
 *
 * The verdict rests on the peak that comes closest to its limit: in line where its whole error band is within the
 * limit, out of line where the whole band is beyond it, near the limit where the band straddles it.
 */
export function judge(
  repetition: MeasuredRepetition,
  { kneeAngleDeg }: Pick<Measurement, 'kneeAngleDeg'>,
  limits: Limits,
): Judgement {
  const { kneeAngleMaxDeg: max, kneeAngleMinDeg: min, measuredShare, mainReason } = repetition;
  if (max === null || min === null || measuredShare < leastMeasuredShare) {
    return notMeasured(mainReason ?? 'frames-missing');
  }
  if (Math.max(max.band, min.band) > widestBandDeg) return notMeasured('band-too-wide');
  const inwardExcessDeg = max.value - limits.kneeInwardDeg;
  const outwardExcessDeg = -min.value - limits.kneeOutwardDeg;
  const inward = inwardExcessDeg >= outwardExcessDeg;
  return {
    verdict: inward ? verdictOf(inwardExcessDeg, max.band) : verdictOf(outwardExcessDeg, min.band),
    reason: null,
    direction: inward ? 'inward' : 'outward',
    worst: inward ? max : min,
    alignmentScorePct: scorePct(repetition, kneeAngleDeg, limits),
  };
}

function notMeasured(reason: MissingReason): Judgement {
  return { verdict: 'not-measured', reason, direction: null, worst: null, alignmentScorePct: null };
}

/**
 * @param excessDeg  how far a peak is beyond its limit, degrees; negative within
 * @param bandDeg  half-width of the peak's error band; 0 for a peak that is known exactly
 */
export function verdictOf(excessDeg: number, bandDeg: number): Exclude<Verdict, 'not-measured'> {
  if (excessDeg > bandDeg) return 'out-of-line';
  return excessDeg > -bandDeg ? 'near-limit' : 'in-line';
}

function scorePct(
  repetition: MeasuredRepetition,
  kneeAngleDeg: Measurement['kneeAngleDeg'],
  limits: Limits,
): number {
  const { measured, within } = countWithin(repetition, kneeAngleDeg, limits);
  return (100 * within) / measured;
}
