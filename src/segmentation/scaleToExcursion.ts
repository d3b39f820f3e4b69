import { quantile } from 'd3-array';
import type { Task } from '../protocol/tasks';

/** Hips that rise or sink by less than this share of leg length make no repetition. */
const smallestRange = 0.05;

/**
 * Hip height turned and scaled so that rest is 0 and the usual far end is 1.
 *
 * @param hipHeight  share of leg length, one a sample
 * @returns  null where there is no movement to speak of
 */
export function scaleToExcursion(task: Task, hipHeight: Float64Array): Float64Array | null {
  const low = quantile(hipHeight, 0.05);
  const high = quantile(hipHeight, 0.95);
  if (low === undefined || high === undefined || high - low < smallestRange) return null;
  const [rest, far] = task.shape === 'rise' ? [low, high] : [high, low];
  return hipHeight.map((value) => (value - rest) / (far - rest));
}
