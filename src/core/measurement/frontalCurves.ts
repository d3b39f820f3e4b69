import type { Side } from '../protocol/side';
import { frontalKneeAngleDeg, frontalKneeDeviation, medianWhere, thighShare } from '../view/frontalKneeAngle';
import { errorBand } from '../view/errorBand';
import { blankCurve, reasonCode, type Curve } from './curve';
import type { View } from './seeView';
import { missingAt, type SmoothPoints } from './smoothPoints';

/** Below this share of its length, seen from the front, the thigh points at the camera and its direction is noise. */
export const leastThighShare = 0.5;

/** Thigh share at which the correction from own standing has faded out, where no seated posture shows it. */
const fadedShare = 0.25;

export interface FrontalCurves {
  /** Knee angle in quiet standing, degrees, inward positive; subtracted where the leg is straight. */
  standingOffsetDeg: number;
  kneeAngleDeg: Curve;
  kneeDeviation: Curve;
  /** Half-width of the error band of either measure at a sample, in its own unit. */
  kneeAngleBandDeg(sample: number): number;
  kneeDeviationBand(sample: number): number;
}

/**
 * Knee angle and knee-line deviation over time, seen square to the body.
 *
 * The network puts hip, knee and ankle slightly off the joints' centres, differently for each person. What it
 * reads in quiet standing, where the leg is straight, is subtracted. With the leg bent, the view's own
 * calibration already contains it, so the correction fades with the thigh's share in the frontal plane.
 */
export function frontalCurves(points: SmoothPoints, view: View, side: Side): FrontalCurves {
  const { working, frontal: leg, isTurned, sources, upright, bent } = view;
  const samples = points.timesMs.length;
  const seen = (when: Uint8Array) => when.map((value, i) => value & working.picture.seen[i]!);
  const standingOffsetDeg = medianWhere(seen(upright), (i) => frontalKneeAngleDeg(leg, side, i)) ?? 0;
  const uprightShare = medianWhere(seen(upright), (i) => thighShare(leg, i)) ?? 1;
  const bentShare = Math.min(fadedShare, medianWhere(seen(bent), (i) => thighShare(leg, i)) ?? fadedShare);

  const kneeAngleDeg = blankCurve(samples);
  const kneeDeviation = blankCurve(samples);
  const joints = (['hip', 'knee', 'ankle'] as const).map((joint) => points.point(`${side}_${joint}`));
  for (let i = 0; i < samples; i++) {
    const missing = missingAt(joints, i);
    if (missing !== 0) {
      kneeAngleDeg.missing[i] = kneeDeviation.missing[i] = missing;
      continue;
    }
    if (isTurned) {
      kneeAngleDeg.missing[i] = kneeDeviation.missing[i] = reasonCode('view-turned');
      continue;
    }
    kneeDeviation.values[i] = frontalKneeDeviation(leg, side, i);
    const share = thighShare(leg, i);
    if (share < leastThighShare) {
      kneeAngleDeg.missing[i] = reasonCode('thigh-foreshortened');
      continue;
    }
    const straight = Math.min(1, Math.max(0, (share - bentShare) / (uprightShare - bentShare)));
    kneeAngleDeg.values[i] = frontalKneeAngleDeg(leg, side, i) - standingOffsetDeg * straight;
  }
  return {
    standingOffsetDeg,
    kneeAngleDeg,
    kneeDeviation,
    kneeAngleBandDeg: errorBand(working.lifted, side, sources, frontalKneeAngleDeg),
    kneeDeviationBand: errorBand(working.lifted, side, sources, frontalKneeDeviation),
  };
}

/** Curves of a leg that was never seen in full: only reasons. */
export function unseenCurves(points: SmoothPoints, side: Side): FrontalCurves {
  const joints = (['hip', 'knee', 'ankle'] as const).map((joint) => points.point(`${side}_${joint}`));
  const curve = blankCurve(points.timesMs.length);
  for (let i = 0; i < points.timesMs.length; i++)
    curve.missing[i] = missingAt(joints, i) || reasonCode('joint-unseen');
  return {
    standingOffsetDeg: 0,
    kneeAngleDeg: curve,
    kneeDeviation: curve,
    kneeAngleBandDeg: () => 0,
    kneeDeviationBand: () => 0,
  };
}
