import type { KeypointName } from '../keypoints/keypointNames';
import type { Side } from '../protocol/side';
import { cosSin } from '../view/bodyFrame';
import type { PictureSize } from './pictureLeg';
import { pointAt, type SmoothPoint, type SmoothPoints } from './smoothPoints';

/**
 * The networks mark a hip on the skin side of its joint, this far from it in shank lengths: in front of it while
 * standing, above it while seated. From rendered figures (docs/view.md).
 */
export const skinToJoint = 0.14;

/** What is needed to find a hip joint behind its mark. */
export interface HipView {
  /** How far the body is turned from the camera, degrees; positive = its front points to the picture's right. */
  yawDeg: number;
  focalPx: number;
  /** Standing lengths, px. */
  shankPx: number;
  thighPx: number;
  /** Whether the mark climbs as the thigh rises; otherwise it is taken to stay in front of the joint. */
  isRaised: boolean;
}

/**
 * The same points with both hips moved from their marks back to the joints, as the picture shows it: a mark in
 * front of the joint is seen beside it by a body that is turned.
 *
 * @param share  distance of mark and joint, in shank lengths
 */
export function hipsAtJoint(
  points: SmoothPoints,
  size: PictureSize,
  { yawDeg, focalPx, shankPx, thighPx, isRaised }: HipView,
  share: number = skinToJoint,
): SmoothPoints {
  const [cos, sin] = cosSin(yawDeg);
  const awayPx = share * shankPx;
  const samples = points.timesMs.length;
  /** How far a mark is in front of its joint and above it, as shares of the whole distance; alike for both hips. */
  const ahead = new Float64Array(samples).fill(1);
  const above = new Float64Array(samples);
  if (isRaised) {
    const [left, right] = [seenThigh('left'), seenThigh('right')];
    for (let i = 0; i < samples; i++) {
      // The share of the thighs that the picture shows is the cosine of how far they are raised.
      const seen = Math.min(1, (left(i) + right(i)) / 2);
      ahead[i] = Math.sqrt((1 + seen) / 2);
      above[i] = Math.sqrt((1 - seen) / 2);
    }
  }
  const hips: Partial<Record<KeypointName, SmoothPoint>> = {
    left_hip: joint('left'),
    right_hip: joint('right'),
  };
  return { ...points, point: (name) => hips[name] ?? points.point(name) };

  function seenThigh(side: Side): (i: number) => number {
    const [hip, knee] = [points.point(`${side}_hip`), points.point(`${side}_knee`)];
    return (i) =>
      Math.hypot(pointAt(hip, i).x - pointAt(knee, i).x, pointAt(hip, i).y - pointAt(knee, i).y) / thighPx;
  }

  function joint(side: Side): SmoothPoint {
    const mark = points.point(`${side}_hip`);
    const [x, y] = [mark.xPx.values.slice(), mark.yPx.values.slice()];
    for (let i = 0; i < samples; i++) {
      // Coming nearer also moves a point away from the picture's middle.
      const right = (x[i]! - size.widthPx / 2) / focalPx;
      const down = (y[i]! - size.heightPx / 2) / focalPx;
      x[i]! -= awayPx * ahead[i]! * (sin + cos * right);
      y[i]! -= awayPx * (ahead[i]! * cos * down - above[i]!);
    }
    return { ...mark, xPx: { ...mark.xPx, values: x }, yPx: { ...mark.yPx, values: y } };
  }
}
