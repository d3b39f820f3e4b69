import type { MissingReason } from '../measurement/curve';
import type { MeasuredRepetition, Measurement } from '../measurement/measurement';
import { findMeasure, type AlwaysLimitedId, type MeasureId } from '../measures/measures';
import { limitedMeasures, type Limits } from '../protocol/limits';
import { countWithin } from './countWithin';
import { beyondShare, judgeMeasure, type MeasureJudgement } from './judgeMeasure';
import type { Verdict } from './verdict';

/** From the one that decides first. */
const byGravity: readonly Verdict[] = ['out-of-line', 'not-measured', 'near-limit', 'in-line'];

export interface Judgement {
  /** Of everything that is limited together. */
  verdict: Verdict;
  /** Why there is no verdict; null where there is one. */
  reason: MissingReason | null;
  /** The measure that the verdict rests on, or that it lacks. */
  decidedBy: MeasureId;
  /**
   * Share of the measured loaded time in which the knee angle was within its limits, 0 to 100 %; null where it was not
   * measured.
   */
  alignmentScorePct: number | null;
  /** One for each measure that has a limit. */
  measures: MeasureJudgement[];
}

/**
 * Judges one repetition against limits.
 *
 * Each measure is judged by itself: in line where its whole error band is within its limit, out of line where the whole
 * band is beyond it, near the limit where the band straddles it, by the peak that comes closest to its limit. The
 * repetition is out of line where any of them is; else not measured where any of them could not be; else near the limit
 * where any of them is.
 */
export function judge(
  repetition: MeasuredRepetition,
  { curves }: Pick<Measurement, 'curves'>,
  limits: Limits,
): Judgement {
  const measures = limitedMeasures(limits).map((id) =>
    judgeMeasure(id, repetition.ranges[id], limits[id] ?? {}),
  );
  const { verdict, reason, measure } = gravest(measures, limits);
  return {
    verdict,
    reason,
    decidedBy: measure,
    measures,
    alignmentScorePct:
      judgementOf({ measures }, 'knee-angle').verdict === 'not-measured'
        ? null
        : scorePct(repetition, curves, limits),
  };
}

/** How one of the measures that always have limits was judged. */
export function judgementOf(
  { measures }: Pick<Judgement, 'measures'>,
  id: AlwaysLimitedId,
): MeasureJudgement {
  return measures.find(({ measure }) => measure === id)!;
}

/**
 * The judgement that the verdict rests on. Of several with the same verdict a measure that always has limits comes
 * first, since every recording is compared by it; then the one that went farthest beyond its limit.
 */
function gravest(measures: readonly MeasureJudgement[], limits: Limits): MeasureJudgement {
  const rank = ({ verdict }: MeasureJudgement) => byGravity.indexOf(verdict);
  const share = (one: MeasureJudgement) =>
    findMeasure(one.measure).isAlwaysLimited ? Infinity : beyondShare(one, limits);
  return measures.reduce((a, b) => {
    if (rank(a) !== rank(b)) return rank(a) < rank(b) ? a : b;
    return share(b) > share(a) ? b : a;
  });
}

function scorePct(repetition: MeasuredRepetition, curves: Measurement['curves'], limits: Limits): number {
  const { measured, within } = countWithin(repetition, curves['knee-angle'], limits['knee-angle']);
  return (100 * within) / measured;
}
