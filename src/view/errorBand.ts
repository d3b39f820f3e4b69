import type { Side } from '../protocol/side';
import { squareToBody, type FrontalLeg } from './frontalKneeAngle';
import { placeOnRay, type LiftedLeg, type PictureJoint } from './liftLeg';
import { emptyPath, type Path } from './path';

/**
 * How far to either side the network sets a joint beyond what quiet standing takes off, one standard deviation in
 * shank lengths: set with all the recordings and the motion capture in sight (docs/view.md).
 */
export const placingSd = 0.012;
/**
 * How far off the length of a segment is that the recording shows at its longest, as a share of it: a leg that never
 * quite straightens reads about 2 % short (synthetic recordings; docs/view.md).
 */
const segmentSd = 0.02;
/** How far off the assumed focal length usually is, as a share: phone and laptop cameras differ by about so much. */
const focalSd = 0.2;
/** From one standard deviation to the half-width that holds nine of ten normal errors. */
export const ninetyPercent = 1.645;

export interface ErrorSources {
  yawDeg: number;
  yawSdDeg: number;
  /** Trembling of the joints after smoothing, one standard deviation, in shank lengths. */
  jitter: number;
}

/**
 * Half-width of the error band of a quantity of one leg at one sample: what the yaw's uncertainty, the joints' placing
 * and trembling, the segments' lengths and the focal length make of it, each moved by one standard deviation on its own,
 * their squares added.
 *
 * @param quantity  any number that follows from a leg square to the body
 * @returns  in the quantity's own unit, 0 or more
 * Source:   first-order propagation of uncertainty (JCGM 100:2008, 5.1.2)
 */
export function errorBand(
  leg: LiftedLeg,
  i: number,
  side: Side,
  sources: ErrorSources,
  quantity: (leg: FrontalLeg, side: Side, i: number) => number,
): number {
  const at = pick(leg, i);
  const value = (moved: LiftedLeg, yawDeg: number) => quantity(squareToBody(moved, yawDeg), side, 0);
  const here = value(at, sources.yawDeg);
  const jointSd = Math.hypot(placingSd, sources.jitter);
  const byYaw = value(at, sources.yawDeg + sources.yawSdDeg) - here;
  const byJoint = (['hip', 'knee', 'ankle'] as const).map(
    (joint) => value({ ...at, [joint]: aside(at[joint], jointSd) }, sources.yawDeg) - here,
  );
  const byShank = value(liftAgain(at, { shank: 1 + segmentSd }), sources.yawDeg) - here;
  const byThigh = value(liftAgain(at, { thigh: 1 + segmentSd }), sources.yawDeg) - here;
  // The yaw is read through the same focal length, and follows the bearing that it gives the person.
  const bearingDeg = (Math.atan2(at.knee.x[0]!, at.knee.z[0]!) * 180) / Math.PI;
  const yawShiftDeg = bearingDeg * (1 - 1 / (1 + focalSd));
  const byFocal = value(liftAgain(at, { focal: 1 + focalSd }), sources.yawDeg + yawShiftDeg) - here;
  return ninetyPercent * Math.hypot(byYaw, ...byJoint, byShank, byThigh, byFocal);
}

/** One sample of a leg as a leg of its own. */
function pick({ hip, knee, ankle, thigh }: LiftedLeg, i: number): LiftedLeg {
  const one = ({ x, y, z }: Path): Path => ({
    x: Float64Array.of(x[i]!),
    y: Float64Array.of(y[i]!),
    z: Float64Array.of(z[i]!),
  });
  return { hip: one(hip), knee: one(knee), ankle: one(ankle), thigh };
}

/** The leg lifted from the same picture with other lengths or another focal length, each times what is given. */
function liftAgain(
  { hip, knee, ankle, thigh }: LiftedLeg,
  { shank: shankBy = 1, thigh: thighBy = 1, focal: focalBy = 1 },
): LiftedLeg {
  const again: LiftedLeg = {
    hip: emptyPath(1),
    knee: emptyPath(1),
    ankle: emptyPath(1),
    thigh: thigh * thighBy,
  };
  // Seen through a longer lens the person stands farther away, as wide and high as before.
  again.ankle = { x: ankle.x, y: ankle.y, z: ankle.z.map((z) => z * focalBy) };
  placeOnRay(again.knee, 0, rayOf(knee), focalBy, again.ankle, shankBy, -1);
  placeOnRay(again.hip, 0, rayOf(hip), focalBy, again.knee, again.thigh, 1);
  return again;
}

/** Where a joint is seen, at a focal length of 1. */
function rayOf({ x, y, z }: Path): PictureJoint {
  return { xPx: x.map((value, i) => value / z[i]!), yPx: y.map((value, i) => value / z[i]!) };
}

function aside({ x, y, z }: Path, by: number): Path {
  return { x: x.map((value) => value + by), y, z };
}
