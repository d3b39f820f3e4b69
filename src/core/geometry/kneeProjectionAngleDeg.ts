import type { Side } from '../protocol/side';
import { toDegrees } from './degrees';
import type { Point } from './point';

/**
 * Frontal-plane projection angle (FPPA) of the knee in the picture: the angle between the line hip to knee
 * and the line knee to ankle.
 *
 * Frame:   any plane seen from the front, x right, y down, in the picture's px or any other unit
 * @param side  the leg, the person's own left or right
 * @returns  degrees, above -180, up to 180; 0 when hip, knee and ankle are on one line
 * Sign:    positive = knee inward, towards the midline (valgus direction); negative = outward (varus direction)
 * Missing: null where two of the points coincide, since a line of no length has no direction
 * Source:  Herrington 2014 and Munro 2012 measure the same angle on the picture; signed here by atan2
 */
export function kneeProjectionAngleDeg(hip: Point, knee: Point, ankle: Point, side: Side): number | null {
  const thigh = { x: knee.x - hip.x, y: knee.y - hip.y };
  const shank = { x: ankle.x - knee.x, y: ankle.y - knee.y };
  const cross = thigh.x * shank.y - thigh.y * shank.x;
  const dot = thigh.x * shank.x + thigh.y * shank.y;
  if ((thigh.x === 0 && thigh.y === 0) || (shank.x === 0 && shank.y === 0)) return null;
  // The person's left is on the right of the picture, so inward turns the other way for each leg.
  const inward = side === 'left' ? -cross : cross;
  // Adding 0 turns -0 into +0, so that a straight leg reads the same on both sides.
  return toDegrees(Math.atan2(inward, dot)) + 0;
}
