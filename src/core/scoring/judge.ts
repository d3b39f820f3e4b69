import type { MissingReason } from '../measurement/curve';
import type { Extreme, MeasuredRepetition, Measurement } from '../measurement/measurement';
import { limitedMeasures, type Limits } from '../protocol/limits';
import type { MeasureId } from '../measures/measures';
import { countWithin } from './countWithin';
import { beyondShare, judgeMeasure, type MeasureJudgement } from './judgeMeasure';
import { leastMeasuredShare, verdictOf, type Verdict } from './verdict';

export type Direction = 'inward' | 'outward';

/** With a wider error band than this to either side, nothing is said of a repetition, degrees. */
export const widestBandDeg = 12;

export interface Judgement {
  /** Of everything that is limited together. */
  verdict: Verdict;
  /** Why there is no verdict; null where there is one. */
  reason: MissingReason | null;
  /** The measure that the verdict rests on, or that it lacks; null where it lacks the knee angle. */
  decidedBy: 'knee-angle' | MeasureId | null;
  /** Of the knee angle alone. */
  knee: Verdict;
  /** The way in which the knee came closest to, or went farthest beyond, its limit; null where not measured. */
  direction: Direction | null;
  /** Knee projection angle at that moment, degrees, inward positive. */
  worst: Extreme | null;
  /** Share of the measured loaded time in which the knee was within its limits, 0 to 100 %; null where not measured. */
  alignmentScorePct: number | null;
  /** The other measures that have a limit; empty where none has. */
  measures: MeasureJudgement[];
}

type KneeJudgement = Pick<Judgement, 'knee' | 'reason' | 'direction' | 'worst' | 'alignmentScorePct'>;

/**
 * Judges one repetition against limits.
 *
 * Each measure is judged by itself: in line where its whole error band is within its limit, out of line where the whole
 * band is beyond it, near the limit where the band straddles it; the knee angle by the peak that comes closest to its
 * limit. The repetition is out of line where any of them is; else not measured where any of them could not be; else near
 * the limit where any of them is.
 */
export function judge(
  repetition: MeasuredRepetition,
  { kneeAngleDeg }: Pick<Measurement, 'kneeAngleDeg'>,
  limits: Limits,
): Judgement {
  const knee = judgeKnee(repetition, kneeAngleDeg, limits);
  const measures = limitedMeasures(limits).map((id) =>
    judgeMeasure(id, repetition.ranges[id], limits.others?.[id] ?? {}),
  );
  const verdict = gravest.find(
    (one) => one === knee.knee || measures.some((measure) => measure.verdict === one),
  )!;
  const { direction, worst, alignmentScorePct } = knee;
  return {
    verdict,
    reason: verdict === 'not-measured' ? (knee.reason ?? missingReason(measures)) : null,
    decidedBy: knee.knee === verdict ? kneeDecides(knee) : farthestBeyond(measures, verdict, limits),
    knee: knee.knee,
    direction,
    worst,
    alignmentScorePct,
    measures,
  };
}

const gravest: readonly Verdict[] = ['out-of-line', 'not-measured', 'near-limit', 'in-line'];

function kneeDecides({ worst }: KneeJudgement): 'knee-angle' | null {
  return worst === null ? null : 'knee-angle';
}

function missingReason(measures: readonly MeasureJudgement[]): MissingReason {
  return measures.find(({ verdict }) => verdict === 'not-measured')?.reason ?? 'frames-missing';
}

/** Of several with the same verdict the one that went farthest beyond its limit. */
function farthestBeyond(measures: readonly MeasureJudgement[], verdict: Verdict, limits: Limits): MeasureId {
  const alike = measures.filter((one) => one.verdict === verdict);
  return alike.reduce((a, b) => (beyondShare(b, limits) > beyondShare(a, limits) ? b : a)).measure;
}

function judgeKnee(
  repetition: MeasuredRepetition,
  kneeAngleDeg: Measurement['kneeAngleDeg'],
  limits: Limits,
): KneeJudgement {
  const { kneeAngleMaxDeg: max, kneeAngleMinDeg: min, measuredShare, mainReason } = repetition;
  if (max === null || min === null || measuredShare < leastMeasuredShare) {
    return notMeasured(mainReason ?? 'frames-missing');
  }
  if (Math.max(max.band, min.band) > widestBandDeg) return notMeasured('band-too-wide');
  const inwardExcessDeg = max.value - limits.kneeInwardDeg;
  const outwardExcessDeg = -min.value - limits.kneeOutwardDeg;
  const inward = inwardExcessDeg >= outwardExcessDeg;
  return {
    knee: inward ? verdictOf(inwardExcessDeg, max.band) : verdictOf(outwardExcessDeg, min.band),
    reason: null,
    direction: inward ? 'inward' : 'outward',
    worst: inward ? max : min,
    alignmentScorePct: scorePct(repetition, kneeAngleDeg, limits),
  };
}

function notMeasured(reason: MissingReason): KneeJudgement {
  return { knee: 'not-measured', reason, direction: null, worst: null, alignmentScorePct: null };
}

function scorePct(
  repetition: MeasuredRepetition,
  kneeAngleDeg: Measurement['kneeAngleDeg'],
  limits: Limits,
): number {
  const { measured, within } = countWithin(repetition, kneeAngleDeg, limits);
  return (100 * within) / measured;
}
