import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';
import type { Point } from '#core/geometry/point';
import { keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import { leastScore } from '#core/keypoints/observedPoint';
import type { Side } from '#core/protocol/side';

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

/** With the thigh shorter than this share of the shank it points at the camera, and its direction is noise. */
const leastThighShare = 0.5;

/**
 * Reads the working leg from one picture.
 *
 * @returns  null where nobody is there, a joint is not seen well enough, or the thigh points at the camera
 */
export function kneeReading(row: KeypointRow | null, side: Side): KneeReading | null {
  if (row === null) return null;
  const joint = (name: KeypointName): Point | null => {
    const at = keypointNames.indexOf(name) * 3;
    const [x, y, score] = [row[at]!, row[at + 1]!, row[at + 2]!];
    return Number.isFinite(x + y) && score >= leastScore ? { x, y } : null;
  };
  const [hip, knee, ankle] = [joint(`${side}_hip`), joint(`${side}_knee`), joint(`${side}_ankle`)];
  if (hip === null || knee === null || ankle === null) return null;
  const thighPx = Math.hypot(knee.x - hip.x, knee.y - hip.y);
  if (thighPx < leastThighShare * Math.hypot(ankle.x - knee.x, ankle.y - knee.y)) return null;
  const deg = kneeProjectionAngleDeg(hip, knee, ankle, side);
  if (deg === null) return null;
  const [heel, toe] = [joint(`${side}_heel`), joint(`${side}_foot_index`)];
  const foot = heel === null || toe === null ? ankle : { x: (heel.x + toe.x) / 2, y: (heel.y + toe.y) / 2 };
  return { deg, foot, hip };
}
