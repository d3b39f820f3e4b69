import { toRadians } from '../geometry/degrees';
import type { View } from '../measurement/seeView';
import { outwardSign, type Side } from '../protocol/side';
import { cosSin } from '../view/bodyFrame';
import { ninetyPercent, placingSd, scaleBand } from '../view/errorBand';
import { medianWhere, squareToBody } from '../view/frontalKneeAngle';
import type { ViewedLeg } from '../view/measureViewCues';

/** Feet closer together than this, in shank lengths, are too close to locate the pelvis between them. */
const leastStance = 0.2;

/** A free leg that is never straight is placed too far away by this, shank lengths (synthetic recordings). */
const freeDepthSd = 0.8;

/**
 * Where the middle of the hips is between the ankles, seen square to the body: 0 over the free foot, 1 over
 * the working foot.
 *
 * @returns  null where a foot is lifted, the other leg was never seen or the feet are too close together
 */
export function placeOfPelvis({ working, other, frontal, yaw, roll, onBothFeet }: View, side: Side) {
  if (other === null || !onBothFeet) return () => null;
  const free = squareToBody(other.lifted, yaw.yawDeg);
  // The pelvis keeps its width: its middle is half a width from the working hip, towards the other.
  const halfWidth = (halfPelvisPx(working, other) / working.segments.shank) * -outwardSign(side);
  const [, sinYaw] = cosSin(yaw.yawDeg);
  return (i: number) => {
    const stance = frontal.ankle.x[i]! - free.ankle.x[i]!;
    if (Math.abs(stance) < leastStance) return null;
    const middle = frontal.hip.x[i]! + halfWidth;
    const ownSd = Math.SQRT2 * Math.hypot(placingSd, working.jitter);
    const above = frontal.ankle.y[i]! - frontal.hip.y[i]!;
    const apart = Math.max(
      Math.abs(frontal.hip.z[i]! - free.ankle.z[i]!),
      Math.abs(frontal.ankle.z[i]! - free.ankle.z[i]!),
    );
    // In a side view, a foot placed too far away appears too far to the side.
    const { x, z } = other.lifted.ankle;
    const farther = freeDepthSd * (Math.abs(sinYaw) + Math.abs(x[i]! / z[i]!));
    const sharedSd = Math.hypot(above * toRadians(roll.sdDeg), apart * toRadians(yaw.sdDeg), farther);
    return {
      value: (middle - free.ankle.x[i]!) / stance,
      band: scaleBand({ whole: Math.hypot(ownSd, sharedSd), own: ownSd }, ninetyPercent / Math.abs(stance)),
    };
  };
}

/** Half the usual distance between the hips, px. */
function halfPelvisPx(working: ViewedLeg, other: ViewedLeg): number {
  const seen = working.picture.seen.map((value, i) => value & other.picture.seen[i]!);
  const widthPx = (i: number) => Math.abs(working.picture.hip.xPx[i]! - other.picture.hip.xPx[i]!);
  return (medianWhere(seen, widthPx) ?? 0) / 2;
}
