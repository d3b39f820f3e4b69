import type { MissingReason } from '../measurement/curve';
import type { Extreme, MeasureRange } from '../measurement/measureRange';
import type { LimitEnd } from '../measures/limitEnd';
import { findMeasure, type MeasureId } from '../measures/measures';
import type { EndLimits, Limits } from '../protocol/limits';
import { leastMeasuredShare, verdictOf, type Verdict } from './verdict';

/** How one measure was kept within its limits. */
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
export function judgeMeasure(id: MeasureId, range: MeasureRange, limits: EndLimits): MeasureJudgement {
  const { heldAgainst, widestBand } = findMeasure(id);
  const { min, max, measuredShare, mainReason } = range;
  const missing = (reason: MissingReason): MeasureJudgement => {
    const end = limits.most === undefined ? 'least' : 'most';
    return { measure: id, verdict: 'not-measured', reason, end, extreme: null };
  };
  if (min === null || max === null || measuredShare < leastMeasuredShare)
    return missing(mainReason ?? 'frames-missing');
  if (widestBand !== null && Math.max(max.band, min.band) > widestBand) return missing('band-too-wide');
  const ends = { min, max };
  const [low, high] = [ends[heldAgainst.least], ends[heldAgainst.most]];
  const [below, above] = [beyond('least', low.value, limits), beyond('most', high.value, limits)];
  const [end, extreme] = below > above ? (['least', low] as const) : (['most', high] as const);
  const verdict = verdictOf(Math.max(below, above), extreme.band);
  return { measure: id, verdict, reason: null, end, extreme };
}

/**
 * How far a measure is beyond the limit that it was judged by, on a scale on which the limits that are proposed at
 * first count alike.
 *
 * @returns  1 where it is as far beyond the limit as the proposed one is from 0; negative within, -Infinity where not measured
 */
export function beyondShare({ measure, end, extreme }: MeasureJudgement, limits: Limits): number {
  if (extreme === null) return -Infinity;
  return beyond(end, extreme.value, limits[measure] ?? {}) / Math.abs(findMeasure(measure).limits[end].first);
}

/** How far a value is beyond one of its limits, negative within; -Infinity where there is none. */
export function beyond(end: LimitEnd, value: number, { least, most }: EndLimits): number {
  if (end === 'least') return least === undefined ? -Infinity : least - value;
  return most === undefined ? -Infinity : value - most;
}
