import type { Task } from '../exercises/exercises';
import { quantileOf } from '../signal/quantileOf';
import { findExcursions } from './findExcursions';

/** A movement of less than this share of leg length is not a repetition ... */
const smallestRange = 0.05;
/** ... and it is over when it is back within this share of rest. */
const backRange = 0.02;
/** Rest is the level that all but a few samples stay on one side of. */
const restQuantile = 0.05;
/** The usual far end: most movements reach it, and a single larger one does not set it. */
const farQuantile = 0.75;

/** Where a movement rests and where its far end usually is, in the movement's own unit. */
export interface MovementRange {
  rest: number;
  far: number;
}

/**
 * The movement that makes a task's repetitions, turned and scaled so that rest is 0 and the usual far end is 1.
 *
 * @param movement  height of the hips ('rise', 'dip') or how far the free foot is out ('reach'), share of leg length
 * @param counts  1 a sample that may set the scale; all do where left out
 * @returns  null where there is no movement to speak of
 */
export function scaleToExcursion(
  { shape }: Pick<Task, 'shape'>,
  movement: Float64Array,
  counts?: Uint8Array,
): Float64Array | null {
  const turned = shape === 'dip' ? movement.map((value) => -value) : movement;
  const counted = counts === undefined ? turned : turned.filter((_, i) => counts[i] !== 0);
  const range = findRange(counted, 1, (share) => quantileOf(counted, share));
  return range && turned.map((value) => (value - range.rest) / (range.far - range.rest));
}

/**
 * The far end is estimated from movements that leave rest and return to it, so that sitting down after a set
 * of squats, or walking out of the picture, does not count.
 *
 * @param turned  movement away from rest, upward positive, any unit; its turning points alone are enough
 * @param legLength  in the same unit
 * @param quantile  of all samples of the movement
 * @returns  null where there is no movement to speak of
 */
export function findRange(
  turned: ArrayLike<number>,
  legLength: number,
  quantile: (share: number) => number | undefined,
): MovementRange | null {
  const rest = quantile(restQuantile);
  const most = quantile(1 - restQuantile);
  const smallest = smallestRange * legLength;
  if (rest === undefined || most === undefined) return null;
  const levels = { rest: rest + backRange * legLength, far: rest + smallest, least: rest + smallest };
  const peaks = findExcursions(turned, levels).flatMap(({ cut, peak }) => (cut === 'none' ? peak : []));
  const far = quantileOf(peaks, farQuantile) ?? most;
  return far - rest < smallest ? null : { rest, far };
}
