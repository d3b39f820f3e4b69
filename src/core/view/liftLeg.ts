import { quantileOf } from '../signal/quantileOf';
import { emptyPath, type Path } from './path';

/** Picture positions of one joint, px from the picture's centre, x right, y down; one a sample. */
export interface PictureJoint {
  xPx: Float64Array;
  yPx: Float64Array;
}

export interface PictureLeg {
  hip: PictureJoint;
  knee: PictureJoint;
  ankle: PictureJoint;
  /** 1 a sample where all three joints were seen. */
  seen: Uint8Array;
}

/** Apparent length of shank and thigh when square to the view, px. */
export interface SegmentsPx {
  shank: number;
  thigh: number;
}

/** A leg in three dimensions, in units of its shank length. */
export interface LiftedLeg {
  hip: Path;
  knee: Path;
  ankle: Path;
  /** Length of the thigh, in shank lengths. */
  thigh: number;
}

/** The quantile of apparent length taken as a segment's length: the longest, except for a few wild frames. */
export const longestQuantile = 0.95;

/**
 * Lengths of thigh and shank when they are longest in the picture.
 *
 * @param standing  1 a sample where the person stands, however long they otherwise sit; all samples where it is
 *   left out or all 0
 * @returns  px; null where the leg was never seen
 */
export function segmentsPx(leg: PictureLeg, standing?: Uint8Array): SegmentsPx | null {
  const { hip, knee, ankle, seen } = leg;
  const thighs: number[] = [];
  const shanks: number[] = [];
  for (let i = 0; i < seen.length; i++) {
    if (seen[i] === 0 || standing?.[i] === 0) continue;
    thighs.push(Math.hypot(knee.xPx[i]! - hip.xPx[i]!, knee.yPx[i]! - hip.yPx[i]!));
    shanks.push(Math.hypot(ankle.xPx[i]! - knee.xPx[i]!, ankle.yPx[i]! - knee.yPx[i]!));
  }
  if (standing !== undefined && thighs.length === 0) return segmentsPx(leg);
  const thigh = quantileOf(thighs, longestQuantile);
  const shank = quantileOf(shanks, longestQuantile);
  return thigh === undefined || shank === undefined || thigh <= 0 || shank <= 0 ? null : { thigh, shank };
}

/**
 * Restores a leg's depth: the ankle stays at one distance from the camera. The knee is one shank length from
 * it, on the near side of its line of sight; the hip one thigh length from the knee, on the far side.
 *
 * Frame:   camera, see Path
 * @param focalPx  focal length, px
 * @returns  positions in shank lengths; where a segment looks longer than it is, the closest point on the line of sight
 * Source:   perspective projection; the idea is common in single-camera pose work
 */
export function liftLeg(leg: PictureLeg, segments: SegmentsPx, focalPx: number): LiftedLeg {
  const samples = leg.seen.length;
  const lifted: LiftedLeg = {
    hip: emptyPath(samples),
    knee: emptyPath(samples),
    ankle: emptyPath(samples),
    thigh: segments.thigh / segments.shank,
  };
  const ankleDistance = focalPx / segments.shank;
  const { hip, knee, ankle } = lifted;
  for (let i = 0; i < samples; i++) {
    if (leg.seen[i] === 0) continue;
    ankle.x[i] = (leg.ankle.xPx[i]! / focalPx) * ankleDistance;
    ankle.y[i] = (leg.ankle.yPx[i]! / focalPx) * ankleDistance;
    ankle.z[i] = ankleDistance;
    placeOnRay(knee, i, leg.knee.xPx[i]! / focalPx, leg.knee.yPx[i]! / focalPx, ankle, 1, -1);
    placeOnRay(hip, i, leg.hip.xPx[i]! / focalPx, leg.hip.yPx[i]! / focalPx, knee, lifted.thigh, 1);
  }
  return lifted;
}

/**
 * Puts sample i of a joint on its line of sight, at a distance from another joint.
 *
 * @param rayX  and `rayY`: where it is seen, at a focal length of 1
 * @param towards  -1 = the nearer of the two possible places, 1 = the farther
 */
export function placeOnRay(
  target: Path,
  i: number,
  rayX: number,
  rayY: number,
  from: Path,
  distance: number,
  towards: 1 | -1,
): void {
  const [x, y, z] = [from.x[i]!, from.y[i]!, from.z[i]!];
  const a = rayX * rayX + rayY * rayY + 1;
  const b = rayX * x + rayY * y + z;
  const c = x * x + y * y + z * z - distance * distance;
  const along = (b + towards * Math.sqrt(Math.max(0, b * b - a * c))) / a;
  target.x[i] = rayX * along;
  target.y[i] = rayY * along;
  target.z[i] = along;
}
