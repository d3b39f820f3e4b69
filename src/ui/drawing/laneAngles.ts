import { clamp } from '#core/clamp';
import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';
import type { FrameLeg } from '#core/keypoints/frameLeg';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';

/** Angles in the picture that the knee would show at the lane's edges and in its middle, degrees, inward positive. */
export interface LaneAngles {
  inwardDeg: number;
  /** What a knee that is straight to the body's front shows in this picture: 0 where the view is square. */
  straightDeg: number;
  outwardDeg: number;
}

/** The lane is never drawn wider than this, degrees. */
const widestDeg = 80;

/**
 * Brings limits, which hold square to the body's front, into the picture of one frame: they are moved by as
 * much as the angle in the picture differs from the measured one. The angle is only used to place the lane,
 * never shown.
 *
 * @param measuredDeg  the measured angle at that time, inward positive; null where there is none
 * @returns  limits as they are where nothing was measured or a joint is unseen
 */
export function laneAngles(
  leg: FrameLeg,
  side: Side,
  limits: Limits,
  measuredDeg: number | null,
): LaneAngles {
  const { hip, knee, ankle } = leg;
  const seen = hip !== null && knee !== null && ankle !== null;
  const pictureDeg = seen ? kneeProjectionAngleDeg(hip, knee, ankle, side) : null;
  const straightDeg = pictureDeg === null || measuredDeg === null ? 0 : pictureDeg - measuredDeg;
  const bounded = (deg: number) => clamp(deg, -widestDeg, widestDeg);
  return {
    inwardDeg: bounded(straightDeg + limits['knee-angle'].most),
    straightDeg: bounded(straightDeg),
    outwardDeg: bounded(straightDeg + limits['knee-angle'].least),
  };
}
