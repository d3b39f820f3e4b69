import type { Side } from '../protocol/side';
import type { Point } from './point';

/**
 * Distance of the knee from the straight line from hip to ankle, as a share of leg length.
 *
 * Frame:   any plane seen from the front, x right, y down, in the picture's px or any other unit
 * @param legLengthPx  thigh plus shank when standing, in the unit of the points, above 0
 * @returns  share of leg length; 0 when the knee is on the line
 * Sign:    positive = knee inward, towards the midline; negative = outward
 * Missing: null where hip and ankle coincide
 * @throws  RangeError where legLengthPx is not above 0
 */
export function kneeLineDeviation(
  hip: Point,
  knee: Point,
  ankle: Point,
  side: Side,
  legLengthPx: number,
): number | null {
  if (!(legLengthPx > 0)) throw new RangeError(`Leg length must be above 0 px, got ${legLengthPx}.`);
  const line = { x: ankle.x - hip.x, y: ankle.y - hip.y };
  const length = Math.hypot(line.x, line.y);
  if (length === 0) return null;
  const cross = line.x * (knee.y - hip.y) - line.y * (knee.x - hip.x);
  // To the picture's right of the line (x larger) cross is negative; that is the outward side of the left leg.
  const inwardPx = (side === 'left' ? cross : -cross) / length;
  return inwardPx / legLengthPx + 0;
}
