import type { Side } from '../protocol/side';
import { squareToBody, type FrontalLeg } from './frontalKneeAngle';
import type { LiftedLeg } from './liftLeg';
import type { Path } from './path';

/**
 * How far to either side the network sets a joint beyond what quiet standing takes off, one standard deviation in
 * shank lengths: fitted on rendered recordings of some figures and shown on others (docs/view.md).
 */
export const placingSd = 0.013;
/** From one standard deviation to the half-width that holds nine of ten normal errors. */
export const ninetyPercent = 1.645;

export interface ErrorSources {
  yawDeg: number;
  yawSdDeg: number;
  /** Trembling of the joints after smoothing, one standard deviation, in shank lengths. */
  jitter: number;
}

/**
 * Half-width of the error band of a quantity of one leg at one sample: what the yaw's uncertainty and the joints'
 * placing make of it, each moved by one standard deviation on its own, their squares added.
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
  return ninetyPercent * Math.hypot(byYaw, ...byJoint);
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

function aside({ x, y, z }: Path, by: number): Path {
  return { x: x.map((value) => value + by), y, z };
}
