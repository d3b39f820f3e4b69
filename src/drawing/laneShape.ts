import type { Point } from '../geometry/point';
import type { Limits } from '../protocol/limits';
import type { Side } from '../protocol/side';
import type { FrameLeg } from './frameLeg';
import { kneeOffsetPx } from './kneeOffsetPx';

/** The knee is kept this share of the line away from both its ends, so that a deep bend still draws a lane. */
const leastShare = 0.1;

/** Four corners of the lane, picture px: from the hip's inward edge round to its outward edge. */
export type LaneShape = [hipInward: Point, footInward: Point, footOutward: Point, hipOutward: Point];

/**
 * The lane that the knee should keep to: a band along the line from ankle to hip, standing on the foot's centre, whose
 * edges lie where the knee would stand at its limits. With the knee at its present height, its dot is within the band
 * exactly when its projection angle is within the limits.
 *
 * Frame:   picture px, x right, y down; the person faces the camera
 * @returns  null where hip, knee or ankle is unseen, or hip and ankle coincide
 */
export function laneShape(
  { hip, knee, ankle, heel, toe }: FrameLeg,
  side: Side,
  limits: Limits,
): LaneShape | null {
  if (hip === null || knee === null || ankle === null) return null;
  const length = Math.hypot(ankle.x - hip.x, ankle.y - hip.y);
  if (length === 0) return null;
  const along = { x: (ankle.x - hip.x) / length, y: (ankle.y - hip.y) / length };
  // The person's left leg is on the right of the picture: inward there is towards the picture's left.
  const turn = side === 'left' ? 1 : -1;
  const inward = { x: -along.y * turn, y: along.x * turn };
  const share = ((knee.x - hip.x) * along.x + (knee.y - hip.y) * along.y) / length;
  const toHipPx = Math.min(1 - leastShare, Math.max(leastShare, share)) * length;
  const inwardPx = kneeOffsetPx(toHipPx, length - toHipPx, limits.kneeInwardDeg);
  const outwardPx = -kneeOffsetPx(toHipPx, length - toHipPx, limits.kneeOutwardDeg);
  const beyondPx = footCentreBeyondPx(ankle, along, heel, toe);
  const foot = { x: ankle.x + along.x * beyondPx, y: ankle.y + along.y * beyondPx };
  const beside = (point: Point, px: number): Point => ({
    x: point.x + inward.x * px,
    y: point.y + inward.y * px,
  });
  return [beside(hip, inwardPx), beside(foot, inwardPx), beside(foot, outwardPx), beside(hip, outwardPx)];
}

/** How far the foot's centre lies beyond the ankle along the line, px; 0 where the foot is unseen. */
function footCentreBeyondPx(ankle: Point, along: Point, heel: Point | null, toe: Point | null): number {
  if (heel === null || toe === null) return 0;
  const centre = { x: (heel.x + toe.x) / 2, y: (heel.y + toe.y) / 2 };
  return Math.max(0, (centre.x - ankle.x) * along.x + (centre.y - ankle.y) * along.y);
}
