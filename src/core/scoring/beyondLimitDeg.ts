import { defaultLimits, type Limits } from '../protocol/limits';
import { decidingMeasure } from './decidingMeasure';
import type { Judgement } from './judge';
import { beyondShare } from './judgeMeasure';

/**
 * How far a repetition went beyond the limit that its verdict rests on; negative within. What is not an angle of the
 * knee is brought to the same scale: the limits that are proposed at first count alike.
 *
 * @returns  degrees of knee angle; null where nothing was measured
 */
export function beyondLimitDeg(judgement: Judgement, limits: Limits): number | null {
  const deciding = decidingMeasure(judgement);
  if (deciding !== null && deciding.extreme !== null)
    return beyondShare(deciding, limits) * defaultLimits.kneeInwardDeg;
  const { worst, direction } = judgement;
  if (worst === null) return null;
  return direction === 'inward' ? worst.value - limits.kneeInwardDeg : -worst.value - limits.kneeOutwardDeg;
}
