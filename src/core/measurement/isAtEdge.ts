import type { Curve } from './curve';

/** This close to a gap, the largest value seen may not be the largest there was, ms: half a period of the smoothing. */
const edgeMs = 100;

/**
 * Whether a sample of a curve lies within 0.1 s of one that is missing.
 *
 * @param timesMs  of the curve's samples, increasing
 * @param from  and `to`: first and last sample that count, both included; what is missing outside is no gap
 */
export function isAtEdge(
  { missing }: Curve,
  timesMs: Float64Array,
  sample: number,
  from: number,
  to: number,
): boolean {
  // Half a millisecond, since times are rounded.
  const isNear = (other: number) => Math.abs(timesMs[other]! - timesMs[sample]!) <= edgeMs + 0.5;
  for (let i = sample; i >= from && isNear(i); i--) if (missing[i] !== 0) return true;
  for (let i = sample; i <= to && isNear(i); i++) if (missing[i] !== 0) return true;
  return false;
}
