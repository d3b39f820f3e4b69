import type { SetPeak } from '../scoring/findSetPeak';
import { changeBeyondError, detectableChange95, type Change } from '../statistics/detectableChange';
import { betweenDaysSemDeg } from './publishedSem';

export interface SetPeakChange extends Change {
  /** Smallest difference that is not measurement error, with 95 % confidence, degrees. */
  detectableDeg: number;
}

/**
 * Whether the mean peaks of two sets differ by more than error: their own, and what one person differs by between two days.
 *
 * @returns  difference later - earlier, degrees, inward positive: 'lower' = less inward in the later one
 */
export function setPeakChange(earlier: SetPeak, later: SetPeak): SetPeakChange {
  // Each has its own error: that of a difference is put as of two measurements with the same one.
  const ownDeg = detectableChange95(Math.hypot(earlier.semDeg, later.semDeg) / Math.SQRT2);
  const detectableDeg = Math.max(ownDeg, detectableChange95(betweenDaysSemDeg));
  return { ...changeBeyondError(earlier.meanDeg, later.meanDeg, detectableDeg), detectableDeg };
}
