import type { Task } from '../exercises/exercises';
import { butterworthLowPass } from '../signal/butterworthLowPass';
import { createCausalLowPass } from '../signal/createCausalLowPass';
import { createSortedSamples } from '../signal/createSortedSamples';
import { createUniformStream } from '../signal/createUniformStream';
import { addTurningPoint } from './addTurningPoint';
import { findExcursions } from './findExcursions';
import { excursionLevels } from './findRepetitions';
import { findRange } from './scaleToExcursion';

/** Cut-off of the low-pass, Hz; the same as in the review, so that both see the same movement. */
const cutoffHz = 6;
/** The review's own time base for recordings of up to 30 frames a second, Hz. */
const rateHz = 30;

export interface LiveCounter {
  /**
   * Takes what was seen in one picture and returns how many repetitions are complete.
   *
   * @param timeMs  strictly increasing; the pictures may come at any pace
   * @param movementPx  height of the hips, any origin ('rise', 'dip'), or how far the free foot is out ('reach'); null
   *   where unseen
   * @param legLengthPx  thigh plus shank; may become more certain from one picture to the next
   */
  push(timeMs: number, movementPx: number | null, legLengthPx: number): number;
}

/**
 * Counts repetitions while they happen, with the review's own scaling, thresholds and hysteresis over all
 * samples so far. Only the smoothing differs, since it can't look ahead.
 *
 * Each new sample is compared with all before it, using only the movement's turning points. These are a few a
 * second, so ten minutes cost hardly any time.
 */
export function createLiveCounter({ shape }: Pick<Task, 'shape'>): LiveCounter {
  const smooth = createCausalLowPass(butterworthLowPass(cutoffHz, rateHz, 1));
  const toUniform = createUniformStream(rateHz);
  const samples = createSortedSamples();
  const turningPoints: number[] = [];
  let count = 0;
  return {
    push(timeMs, movementPx, legLengthPx) {
      const fresh = toUniform(timeMs, movementPx);
      for (const value of fresh) {
        const turned = smooth(shape === 'dip' ? -value : value);
        samples.add(turned);
        addTurningPoint(turningPoints, turned);
      }
      if (fresh.length > 0) count = countComplete(turningPoints, legLengthPx, samples.quantile);
      return count;
    },
  };
}

function countComplete(
  points: readonly number[],
  legLengthPx: number,
  quantile: (share: number) => number | undefined,
): number {
  const range = findRange(points, legLengthPx, quantile);
  if (range === null) return 0;
  const at = (level: number) => range.rest + level * (range.far - range.rest);
  const { rest, far, least } = excursionLevels;
  return findExcursions(points, { rest: at(rest), far: at(far), least: at(least) }).filter(
    ({ cut, farStart }) => cut === 'none' && farStart !== null,
  ).length;
}
