import { distancePx } from '../geometry/point';
import { otherSide, outwardSign, sides, type Side } from '../protocol/side';
import { medianOf } from '../signal/quantileOf';
import { missingAt, pointAt, type SmoothPoint, type SmoothPoints } from './smoothPoints';

/** How the person is filmed: from the front, from behind, or in a picture on its side or upside down. */
export type Facing = 'front' | 'back' | 'tipped';

/**
 * From behind, the toes of a foot on the floor are above its heel in the picture by more than this share of
 * the apparent shank. From the front they are below it by 0.12 and more: 32 recordings of fixtures/rendered.
 */
const toesAbove = 0.03;

/**
 * How the person is filmed. From behind or upside down, inward looks like outward.
 *
 * The hips tell it: from the front, the left one is to the right of the other in the picture. Where a network
 * takes a back for a front, and so one leg for the other, the feet on the floor do, unless the camera is near
 * it.
 *
 * @param points  not levelled
 * @param onBothFeet  whether both feet stay on the floor; otherwise only the working one
 * @returns  'front' where hips and working ankle were never seen together
 */
export function findFacing(points: SmoothPoints, side: Side, onBothFeet: boolean): Facing {
  const joints = [`${side}_hip`, `${side}_ankle`, `${otherSide(side)}_hip`] as const;
  const [hip, ankle, otherHip] = joints.map((name) => points.point(name)) as [
    SmoothPoint,
    SmoothPoint,
    SmoothPoint,
  ];
  const body = [hip, ankle, otherHip];
  const downPx = usually(points, body, (i) => pointAt(ankle, i).y - pointAt(hip, i).y);
  const asidePx = usually(points, body, (i) => Math.abs(pointAt(ankle, i).x - pointAt(hip, i).x));
  const apartPx = usually(points, body, (i) => pointAt(hip, i).x - pointAt(otherHip, i).x);
  if (downPx === null || asidePx === null || apartPx === null) return 'front';
  if (downPx < asidePx) return 'tipped';
  if (apartPx * outwardSign(side) < 0) return 'back';
  const feet = onBothFeet ? sides : [side];
  return feet.some((whose) => (toesUp(points, whose) ?? 0) > toesAbove) ? 'back' : 'front';
}

/** How far the toes are above the heel in the picture, in apparent shank lengths; null where they were never seen. */
function toesUp(points: SmoothPoints, side: Side): number | null {
  const joints = [`${side}_knee`, `${side}_ankle`, `${side}_heel`, `${side}_foot_index`] as const;
  const foot = joints.map((name) => points.point(name)) as [
    SmoothPoint,
    SmoothPoint,
    SmoothPoint,
    SmoothPoint,
  ];
  const [knee, ankle, heel, toes] = foot;
  return usually(points, foot, (i) => {
    const shankPx = distancePx(pointAt(knee, i), pointAt(ankle, i));
    return (pointAt(heel, i).y - pointAt(toes, i).y) / Math.max(1, shankPx);
  });
}

/** The median over the samples in which all joints were seen; null where there are none. */
function usually(
  { timesMs }: SmoothPoints,
  joints: readonly SmoothPoint[],
  value: (i: number) => number,
): number | null {
  const seen = Array.from(timesMs.keys()).filter((i) => missingAt(joints, i) === 0);
  return medianOf(seen.map(value)) ?? null;
}
