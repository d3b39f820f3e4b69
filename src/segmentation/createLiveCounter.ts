import type { Task } from '../protocol/tasks';
import { butterworthLowPass } from '../signal/butterworthLowPass';
import { createCausalLowPass } from '../signal/createCausalLowPass';
import { findExcursions } from './findExcursions';
import { excursionLevels } from './findRepetitions';
import { scaleToExcursion } from './scaleToExcursion';

/** Cut-off of the low-pass, Hz; the same as in the review, so that both see the same movement. */
const cutoffHz = 6;

export interface LiveCounter {
  /**
   * Takes in one sample and tells how many repetitions are complete.
   *
   * @param hipHeight  share of leg length, any origin; where the hips are unseen, the last height
   */
  push(hipHeight: number): number;
}

/**
 * Counts repetitions while they happen, with the review's own scaling, thresholds and hysteresis over all that has come
 * in so far; only the smoothing differs, since it can't look ahead.
 *
 * @param rateHz  samples a second, above 12
 */
export function createLiveCounter(task: Task, rateHz: number): LiveCounter {
  const smooth = createCausalLowPass(butterworthLowPass(cutoffHz, rateHz, 1));
  const heights: number[] = [];
  return {
    push(hipHeight) {
      heights.push(smooth(hipHeight));
      const excursion = scaleToExcursion(task, Float64Array.from(heights));
      if (excursion === null) return 0;
      return findExcursions(excursion, excursionLevels).filter(
        ({ cut, farStart }) => cut === 'none' && farStart !== null,
      ).length;
    },
  };
}
