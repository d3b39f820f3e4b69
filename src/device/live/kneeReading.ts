import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';
import type { Point } from '#core/geometry/point';
import { rowLeg } from '#core/keypoints/frameLeg';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import { showsThigh } from '#core/measurement/showsThigh';
import { otherSide, outwardSign, type Side } from '#core/protocol/side';

/** The working leg in one picture of the camera. */
export interface KneeReading {
  /**
   * Knee projection angle in the picture, degrees, inward positive; valid for somebody who faces the camera
   * squarely.
   */
  deg: number;
  /** The middle of the foot, from which the plumb line rises, and the hip; px of the camera's picture. */
  foot: Point;
  hip: Point;
}

/**
 * Reads the working leg from one picture.
 *
 * @returns  null where nobody is there, a joint is not seen well enough, the thigh points at the camera, or the
 *   person is seen from behind, where inward looks like outward
 */
export function kneeReading(row: KeypointRow | null, side: Side): KneeReading | null {
  if (row === null) return null;
  const leg = rowLeg(row, side);
  const { hip, knee, ankle, heel, toe } = leg;
  const otherHip = rowLeg(row, otherSide(side)).hip;
  if (hip === null || knee === null || ankle === null || !showsThigh(leg)) return null;
  if (otherHip !== null && (hip.x - otherHip.x) * outwardSign(side) < 0) return null;
  const deg = kneeProjectionAngleDeg(hip, knee, ankle, side);
  if (deg === null) return null;
  const foot = heel === null || toe === null ? ankle : { x: (heel.x + toe.x) / 2, y: (heel.y + toe.y) / 2 };
  return { deg, foot, hip };
}
