import { kneeLineDeviation } from '../geometry/kneeLineDeviation';
import { kneeProjectionAngleDeg } from '../geometry/kneeProjectionAngleDeg';
import type { Point } from '../geometry/point';
import type { Side } from '../protocol/side';
import { medianOf } from '../signal/quantileOf';
import { toBodyFrame } from './bodyFrame';
import type { LiftedLeg } from './liftLeg';
import type { Path } from './path';

/** A leg square to the body's front; positions in shank lengths, x to the person's left, y down, z backwards. */
export interface FrontalLeg {
  hip: Path;
  knee: Path;
  ankle: Path;
  thigh: number;
}

export function squareToBody({ hip, knee, ankle, thigh }: LiftedLeg, yawDeg: number): FrontalLeg {
  return {
    hip: toBodyFrame(hip, yawDeg),
    knee: toBodyFrame(knee, yawDeg),
    ankle: toBodyFrame(ankle, yawDeg),
    thigh,
  };
}

/**
 * Frontal-plane projection angle of the knee at one sample.
 *
 * Frame:   seen square from the body's front, without perspective
 * @returns  degrees, above -180 to 180; 0 when hip, knee and ankle are on one line
 * Sign:    positive = knee inward, towards the midline; negative = outward
 */
export function frontalKneeAngleDeg({ hip, knee, ankle }: FrontalLeg, side: Side, i: number): number {
  // Joints that coincide form no angle.
  return kneeProjectionAngleDeg(frontal(hip, i), frontal(knee, i), frontal(ankle, i), side) ?? 0;
}

/**
 * Distance of the knee from the line from hip to ankle at one sample.
 *
 * Frame:   seen square from the body's front, without perspective
 * @returns  share of leg length; 0 when the knee is on the line
 * Sign:    positive = knee inward, towards the midline; negative = outward
 */
export function frontalKneeDeviation({ hip, knee, ankle, thigh }: FrontalLeg, side: Side, i: number): number {
  return kneeLineDeviation(frontal(hip, i), frontal(knee, i), frontal(ankle, i), side, 1 + thigh) ?? 0;
}

function frontal({ x, y }: Path, i: number): Point {
  return { x: x[i]!, y: y[i]! };
}

/** How much of the thigh is seen from the front: 1 upright, towards 0 when it points at the camera. */
export function thighShare({ hip, knee, thigh }: FrontalLeg, i: number): number {
  return Math.hypot(knee.x[i]! - hip.x[i]!, knee.y[i]! - hip.y[i]!) / thigh;
}

/** Median of a quantity over the samples that count; null where none does. */
export function medianWhere(when: Uint8Array, quantity: (i: number) => number): number | null {
  const values: number[] = [];
  for (let i = 0; i < when.length; i++) if (when[i] !== 0) values.push(quantity(i));
  return medianOf(values) ?? null;
}
