import { quantileOf } from '../signal/quantileOf';
import type { Task } from '../protocol/tasks';

/** A movement of less than this share of leg length makes no repetition. */
const smallestRange = 0.05;

/**
 * The movement that makes a task's repetitions, turned and scaled so that rest is 0 and the usual far end is 1.
 *
 * @param movement  height of the hips ('rise', 'dip') or how far the free foot is out ('reach'), share of leg length
 * @returns  null where there is no movement to speak of
 */
export function scaleToExcursion(
  { shape }: Pick<Task, 'shape'>,
  movement: Float64Array,
): Float64Array | null {
  const low = quantileOf(movement, 0.05);
  const high = quantileOf(movement, 0.95);
  if (low === undefined || high === undefined || high - low < smallestRange) return null;
  const [rest, far] = shape === 'dip' ? [high, low] : [low, high];
  return movement.map((value) => (value - rest) / (far - rest));
}
