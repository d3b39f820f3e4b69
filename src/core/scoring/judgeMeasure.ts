import type { MissingReason } from '../measurement/curve';
import type { Extreme, MeasureRange } from '../measurement/measurement';
import { limitChoices, type EndLimits, type LimitEnd, type Limits } from '../protocol/limits';
import type { MeasureId } from '../measures/measures';
import { leastMeasuredShare, verdictOf, type Verdict } from './verdict';

/** How one measure beside the knee angle was kept within its limits. */
export interface MeasureJudgement {
  measure: MeasureId;
  verdict: Verdict;
  /** Why there is no verdict; null where there is one. */
  reason: MissingReason | null;
  /** The limit that it came closest to, or went farthest beyond. */
  end: LimitEnd;
  /** The value there, in the measure's own unit and sign; null where not measured. */
  extreme: Extreme | null;
}

/** @param limits  one of the ends at least */
export function judgeMeasure(measure: MeasureId, range: MeasureRange, limits: EndLimits): MeasureJudgement {
  const { min, max, measuredShare, mainReason } = range;
  if (min === null || max === null || measuredShare < leastMeasuredShare) {
    const end = limits.most === undefined ? 'least' : 'most';
    return { measure, verdict: 'not-measured', reason: mainReason ?? 'frames-missing', end, extreme: null };
  }
  // Every repetition begins at no depth: it is the deepest point that has to reach the least.
  const low = measure === 'depth' ? max : min;
  const [below, above] = [beyond('least', low, limits), beyond('most', max, limits)];
  const [end, extreme] = below > above ? (['least', low] as const) : (['most', max] as const);
  const verdict = verdictOf(Math.max(below, above), extreme.band);
  return { measure, verdict, reason: null, end, extreme };
}

/**
 * How far a measure is beyond the limit that it was judged by, on a scale on which the limits that are proposed at
 * first count alike.
 *
 * @returns  1 where it is as far beyond the limit as the proposed one is from 0; negative within, -Infinity where not measured
 */
export function beyondShare({ measure, end, extreme }: MeasureJudgement, { others }: Limits): number {
  if (extreme === null) return -Infinity;
  return beyond(end, extreme, others?.[measure] ?? {}) / Math.abs(limitChoices[measure][end].first);
}

function beyond(end: LimitEnd, { value }: Extreme, { least, most }: EndLimits): number {
  if (end === 'least') return least === undefined ? -Infinity : least - value;
  return most === undefined ? -Infinity : value - most;
}
