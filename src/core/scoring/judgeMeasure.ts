import type { Sureness } from '../chance/grade';
import type { MissingReason } from '../measurement/curve';
import type { Extreme, MeasureRange } from '../measurement/measureRange';
import type { LimitEnd } from '../measures/limitEnd';
import { findMeasure, type MeasureId } from '../measures/measures';
import type { EndLimits, Limits } from '../protocol/limits';
import { beyond } from './beyond';
import { chanceWithin } from './chanceWithin';
import { leastMeasuredShare, verdictOf, type Verdict } from './verdict';

/** How one measure was kept within its limits. */
export interface MeasureJudgement {
  measure: MeasureId;
  verdict: Verdict;
  /** Chance that it was within its limits, 0 to 1; null where not measured. */
  chanceInLine: number | null;
  /** Why there is no verdict; null where there is one. */
  reason: MissingReason | null;
  /** The limit that it came closest to, or went farthest beyond. */
  end: LimitEnd;
  /** The value there, in the measure's own unit and sign; null where not measured. */
  extreme: Extreme | null;
}

/** @param limits  one of the ends at least */
export function judgeMeasure(
  id: MeasureId,
  range: MeasureRange,
  limits: EndLimits,
  sureness: Sureness,
): MeasureJudgement {
  const { widestBand } = findMeasure(id);
  const { min, max, measuredShare, mainReason } = range;
  const missing = (reason: MissingReason): MeasureJudgement => {
    const end = limits.most === undefined ? 'least' : 'most';
    return { measure: id, verdict: 'not-measured', chanceInLine: null, reason, end, extreme: null };
  };
  if (min === null || max === null || measuredShare < leastMeasuredShare)
    return missing(mainReason ?? 'frames-missing');
  if (widestBand !== null && Math.max(max.band, min.band) > widestBand) return missing('band-too-wide');
  const held = heldExtremes(id, { min, max });
  const { least, most } = held;
  const end = beyond('least', least.value, limits) > beyond('most', most.value, limits) ? 'least' : 'most';
  const chanceInLine = chanceWithin(held, limits);
  const verdict = verdictOf(chanceInLine, sureness);
  return { measure: id, verdict, chanceInLine, reason: null, end, extreme: held[end] };
}

/** The extremes of a range, each named after the limit that it is held against. */
export function heldExtremes<One>(id: MeasureId, ends: { min: One; max: One }): Record<LimitEnd, One> {
  const { heldAgainst } = findMeasure(id);
  return { least: ends[heldAgainst.least], most: ends[heldAgainst.most] };
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
