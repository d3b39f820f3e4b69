import type { KeypointName } from '../keypoints/keypointNames';
import { cosSin } from '../view/bodyFrame';
import type { PictureSize } from './pictureLeg';
import type { SmoothPoint, SmoothPoints } from './smoothPoints';

/**
 * The networks mark a hip on the skin in front of its joint, this far from it in shank lengths. From rendered
 * figures (docs/view.md).
 */
export const skinToJoint = 0.14;

/** What is needed to find a hip joint behind its mark. */
export interface HipView {
  /** How far the body is turned from the camera, degrees; positive = its front points to the picture's right. */
  yawDeg: number;
  focalPx: number;
  /** Standing length, px. */
  shankPx: number;
}

/**
 * The same points with both hips moved from their marks back to the joints, as the picture shows it: a mark in
 * front of the joint is seen beside it by a body that is turned.
 */
export function hipsAtJoint(
  points: SmoothPoints,
  size: PictureSize,
  { yawDeg, focalPx, shankPx }: HipView,
): SmoothPoints {
  const [cos, sin] = cosSin(yawDeg);
  const aheadPx = skinToJoint * shankPx;
  const joint = (name: KeypointName): SmoothPoint => {
    const mark = points.point(name);
    // Coming nearer also moves a point away from the picture's middle.
    const x = mark.xPx.values.map((x) => x - aheadPx * (sin + (cos * (x - size.widthPx / 2)) / focalPx));
    const y = mark.yPx.values.map((y) => y - (aheadPx * cos * (y - size.heightPx / 2)) / focalPx);
    return { ...mark, xPx: { ...mark.xPx, values: x }, yPx: { ...mark.yPx, values: y } };
  };
  const hips: Partial<Record<KeypointName, SmoothPoint>> = {
    left_hip: joint('left_hip'),
    right_hip: joint('right_hip'),
  };
  return { ...points, point: (name) => hips[name] ?? points.point(name) };
}
