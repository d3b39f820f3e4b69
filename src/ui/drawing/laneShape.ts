import { clamp } from '#core/clamp';
import { distancePx, type Point } from '#core/geometry/point';
import type { FrameLeg } from '#core/keypoints/frameLeg';
import type { Side } from '#core/protocol/side';
import { kneeOffsetPx } from './kneeOffsetPx';
import type { LaneAngles } from './laneAngles';

/** The knee is kept this share of the line away from both its ends, so that a deep bend still draws a lane. */
const leastShare = 0.1;

/** The lane's two edges, each from the hip past the knee to the foot; picture px. */
export interface LaneShape {
  inward: [hip: Point, knee: Point, foot: Point];
  outward: [hip: Point, knee: Point, foot: Point];
}

/**
 * The lane that the knee should keep to: a band from the foot's centre to the hip, as wide at the knee as the limits
 * allow. At the knee's present height its dot is within the band exactly when its angle is within the limits. Seen
 * square the band is straight; where the view makes a straight knee look bent, the band bends with it.
 *
 * Frame:   picture px, x right, y down; the person faces the camera
 * @returns  null where hip, knee or ankle is unseen, or hip and ankle coincide
 */
export function laneShape(
  { hip, knee, ankle, heel, toe }: FrameLeg,
  side: Side,
  angles: LaneAngles,
): LaneShape | null {
  if (hip === null || knee === null || ankle === null) return null;
  const length = distancePx(hip, ankle);
  if (length === 0) return null;
  const along = { x: (ankle.x - hip.x) / length, y: (ankle.y - hip.y) / length };
  // The person's left leg is on the right of the picture: inward there is towards the picture's left.
  const turn = side === 'left' ? 1 : -1;
  const inward = { x: -along.y * turn, y: along.x * turn };
  const share = ((knee.x - hip.x) * along.x + (knee.y - hip.y) * along.y) / length;
  const toHipPx = clamp(share, leastShare, 1 - leastShare) * length;
  const place = (alongPx: number, inwardPx: number): Point => ({
    x: hip.x + along.x * alongPx + inward.x * inwardPx,
    y: hip.y + along.y * alongPx + inward.y * inwardPx,
  });
  const footPx = length + footCentreBeyondPx(ankle, along, heel, toe);
  const offset = (angleDeg: number) => kneeOffsetPx(toHipPx, length - toHipPx, angleDeg);
  const middlePx = offset(angles.straightDeg);
  const edge = (atKneePx: number): [Point, Point, Point] => [
    place(0, atKneePx - middlePx),
    place(toHipPx, atKneePx),
    place(footPx, atKneePx - middlePx),
  ];
  return { inward: edge(offset(angles.inwardDeg)), outward: edge(offset(angles.outwardDeg)) };
}

/** How far the foot's centre is beyond the ankle along the line, px; 0 where the foot is unseen. */
function footCentreBeyondPx(ankle: Point, along: Point, heel: Point | null, toe: Point | null): number {
  if (heel === null || toe === null) return 0;
  const centre = { x: (heel.x + toe.x) / 2, y: (heel.y + toe.y) / 2 };
  return Math.max(0, (centre.x - ankle.x) * along.x + (centre.y - ankle.y) * along.y);
}
