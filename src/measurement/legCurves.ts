import { quantile } from 'd3-array';
import { kneeLineDeviation } from '../geometry/kneeLineDeviation';
import { kneeProjectionAngleDeg } from '../geometry/kneeProjectionAngleDeg';
import { distancePx } from '../geometry/point';
import type { Side } from '../protocol/side';
import { reasonCode, type Curve } from './curve';
import { missingAt, pointAt, type SmoothPoints } from './smoothPoints';

/** Below this share of its standing length the thigh points at the camera and its direction in the picture is noise. */
export const leastThighShare = 0.6;

export interface LegCurves {
  /** Null where the leg was never seen whole. */
  legLengthPx: number | null;
  kneeAngleDeg: Curve;
  kneeDeviation: Curve;
}

/** Knee projection angle and knee-line deviation of one leg over time. */
export function legCurves(points: SmoothPoints, side: Side): LegCurves {
  const leg = (['hip', 'knee', 'ankle'] as const).map((joint) => points.point(`${side}_${joint}`));
  const [hip, knee, ankle] = leg as [(typeof leg)[0], (typeof leg)[0], (typeof leg)[0]];
  const count = points.timesMs.length;
  const thighsPx: number[] = [];
  const legsPx: number[] = [];
  for (let i = 0; i < count; i++) {
    if (missingAt(leg, i) !== 0) continue;
    const thighPx = distancePx(pointAt(hip, i), pointAt(knee, i));
    thighsPx.push(thighPx);
    legsPx.push(thighPx + distancePx(pointAt(knee, i), pointAt(ankle, i)));
  }
  // The 95th percentile stands for standing straight and shrugs off a few wild frames.
  const standingThighPx = quantile(thighsPx, 0.95) ?? 0;
  const legLengthPx = quantile(legsPx, 0.95) ?? null;
  const kneeAngleDeg = emptyCurve(count);
  const kneeDeviation = emptyCurve(count);
  for (let i = 0; i < count; i++) {
    const missing = missingAt(leg, i);
    if (missing !== 0 || legLengthPx === null) {
      kneeAngleDeg.missing[i] = kneeDeviation.missing[i] = missing || reasonCode('joint-unseen');
      continue;
    }
    const joints = [pointAt(hip, i), pointAt(knee, i), pointAt(ankle, i)] as const;
    if (distancePx(joints[0], joints[1]) < leastThighShare * standingThighPx) {
      kneeAngleDeg.missing[i] = reasonCode('thigh-foreshortened');
    } else {
      put(kneeAngleDeg, i, kneeProjectionAngleDeg(...joints, side));
    }
    put(kneeDeviation, i, kneeLineDeviation(...joints, side, legLengthPx));
  }
  return { legLengthPx, kneeAngleDeg, kneeDeviation };
}

function emptyCurve(count: number): { values: Float64Array; missing: Uint8Array } {
  return { values: new Float64Array(count), missing: new Uint8Array(count) };
}

function put(curve: Curve, sample: number, value: number | null): void {
  if (value === null) curve.missing[sample] = reasonCode('joint-unseen');
  else curve.values[sample] = value;
}
