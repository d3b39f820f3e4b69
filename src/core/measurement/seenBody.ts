import { otherSide, outwardSign, type Side } from '../protocol/side';
import { closerBand, type ConformalShares } from '../view/closerBand';
import { errorBand, ninetyPercent, noBand, placingSd, type Band } from '../view/errorBand';
import { frontalKneeAngleDeg, medianWhere, type FrontalLeg } from '../view/frontalKneeAngle';
import { blankCurve, reasonCode, type Curve, type MissingReason } from './curve';
import type { View } from './seeView';
import { missingAt, type SmoothPoint, type SmoothPoints } from './smoothPoints';

/** A measure over time, and its error band at a sample, in its own unit. */
export interface Series {
  curve: Curve;
  band: (sample: number) => Band;
}

export type PointPair = readonly [SmoothPoint, SmoothPoint];
type LegQuantity = (leg: FrontalLeg, side: Side, i: number) => number;
type Joint = 'hip' | 'knee' | 'ankle' | 'shoulder';

/** A body seen square to its front as far as the view allows, with what measures are made of. */
export interface SeenBody {
  view: View;
  /** The working side. */
  side: Side;
  samples: number;
  /** Hip, knee and ankle of the working leg. */
  leg: readonly SmoothPoint[];
  /** The working leg with hip and ankle of the other one. */
  feet: readonly SmoothPoint[];
  /** The working side's first. */
  hips: PointPair;
  shoulders: PointPair;
  /** Sign of the picture's right as seen from the working leg towards the other one. */
  towardsMidline: number;
  /** In shank lengths. */
  legLength: number;
  /** 1 where the person stands upright and the working leg is seen whole. */
  seenUpright: Uint8Array;
  /** Knee angle that the quiet standing showed, degrees, inward positive. */
  standingOffsetDeg: number;
  /** A quantity over time, missing where one of the joints is, and all the time where the view is turned too far. */
  curve: (joints: readonly SmoothPoint[], quantity: (i: number) => number | MissingReason) => Curve;
  /** The same counted from quiet standing, so that a tilted camera or an uneven pelvis does not count. */
  fromStanding: (joints: readonly SmoothPoint[], quantity: (i: number) => number) => Curve;
  /** A quantity of the working leg, with its band; `shares` where its errors were fitted apart. */
  ofLeg: (quantity: LegQuantity, shares?: ConformalShares) => Series;
  legBand: (quantity: LegQuantity, shares?: ConformalShares) => Series['band'];
  /** Half-width of the band of a distance between two points, as a share of another distance, px; own in each repetition. */
  bandShare: (ofPx: number) => number;
}

/** @param closerUntilMs  up to here the recording was looked at more closely, ms */
export function seeBody(points: SmoothPoints, view: View, side: Side, closerUntilMs = -Infinity): SeenBody {
  const { working, frontal, isTurned, sources, upright } = view;
  const samples = points.timesMs.length;
  const of = (whose: Side, ...joints: Joint[]) => joints.map((joint) => points.point(`${whose}_${joint}`));
  const pair = (joint: Joint): PointPair => [
    points.point(`${side}_${joint}`),
    points.point(`${otherSide(side)}_${joint}`),
  ];
  const leg = legOf(points, side);
  const seenUpright = upright.map((value, i) => value & working.picture.seen[i]!);

  const turned = isTurned ? reasonCode('view-turned') : 0;
  const curve: SeenBody['curve'] = (joints, quantity) => {
    const made = blankCurve(samples);
    for (let i = 0; i < samples; i++) {
      const missing = missingAt(joints, i) || turned;
      const value = missing === 0 ? quantity(i) : 0;
      if (typeof value === 'number') made.values[i] = value;
      made.missing[i] = typeof value === 'number' ? missing : reasonCode(value);
    }
    return made;
  };
  const fromStanding: SeenBody['fromStanding'] = (joints, quantity) => {
    const { values, missing } = curve(joints, quantity);
    const standing = upright.map((value, i) => (missing[i] === 0 ? value : 0));
    const own = medianWhere(standing, (i) => values[i]!) ?? 0;
    values.forEach((value, i) => (values[i] = missing[i] === 0 ? value - own : 0));
    return { values, missing };
  };
  const legBand: SeenBody['legBand'] = (quantity, shares) => {
    const band = errorBand(working.lifted, side, sources, quantity);
    return (i) => (points.timesMs[i]! <= closerUntilMs ? closerBand(band(i), view.yaw, shares) : band(i));
  };
  return {
    view,
    side,
    samples,
    leg,
    seenUpright,
    curve,
    fromStanding,
    legBand,
    feet: [...leg, ...of(otherSide(side), 'hip', 'ankle')],
    hips: pair('hip'),
    shoulders: pair('shoulder'),
    towardsMidline: -outwardSign(side),
    legLength: 1 + frontal.thigh,
    standingOffsetDeg: medianWhere(seenUpright, (i) => frontalKneeAngleDeg(frontal, side, i)) ?? 0,
    ofLeg: (quantity, shares) => ({
      curve: curve(leg, (i) => quantity(frontal, side, i)),
      band: legBand(quantity, shares),
    }),
    bandShare: (ofPx) =>
      ninetyPercent *
      Math.SQRT2 *
      Math.hypot(placingSd, working.jitter) *
      (working.segments.shank / Math.max(1, ofPx)),
  };
}

/** Any measure of a leg that was never seen whole: nothing but reasons. */
export function unseenSeries(points: SmoothPoints, side: Side): Series {
  const joints = legOf(points, side);
  const curve = blankCurve(points.timesMs.length);
  for (let i = 0; i < points.timesMs.length; i++)
    curve.missing[i] = missingAt(joints, i) || reasonCode('joint-unseen');
  return { curve, band: () => noBand };
}

function legOf(points: SmoothPoints, side: Side): SmoothPoint[] {
  return (['hip', 'knee', 'ankle'] as const).map((joint) => points.point(`${side}_${joint}`));
}
