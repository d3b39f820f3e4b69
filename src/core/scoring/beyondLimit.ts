import type { Limits } from '../protocol/limits';
import { tellingMeasure } from './deciding';
import type { Judgement } from './judge';
import { beyondShare } from './judgeMeasure';

/**
 * How far a repetition went beyond the limit that its verdict rests on; negative within. Where what the verdict rests on
 * is missing it is the knee angle's.
 *
 * @returns  1 where it is as far beyond as the limit that is proposed at first is from 0; null where nothing was measured
 */
export function beyondLimit(judgement: Judgement, limits: Limits): number | null {
  const telling = tellingMeasure(judgement);
  return telling.extreme === null ? null : beyondShare(telling, limits);
}
