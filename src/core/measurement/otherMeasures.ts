import { toDegrees } from '../geometry/degrees';
import type { OtherMeasureId } from '../measures/measures';
import { otherSide, outwardSign, type Side } from '../protocol/side';
import { cosSin } from '../view/bodyFrame';
import { errorBand, ninetyPercent, placingSd } from '../view/errorBand';
import { footHeadingDeg } from '../view/footHeadingDeg';
import { medianWhere, type FrontalLeg } from '../view/frontalKneeAngle';
import { blankCurve, reasonCode, type Curve, type MissingReason } from './curve';
import { pelvisPlace } from './pelvisPlace';
import type { View } from './seeView';
import { middleAt, missingAt, pointAt, type SmoothPoint, type SmoothPoints } from './smoothPoints';

/** A measure over time, and the half-width of its error band at a sample, in its own unit. */
export interface OtherMeasure {
  curve: Curve;
  band(sample: number): number;
}
export type OtherMeasures = Record<OtherMeasureId, OtherMeasure>;

type Joint = 'hip' | 'knee' | 'ankle' | 'shoulder';
type PointPair = readonly [SmoothPoint, SmoothPoint];

/**
 * Measures beside the knee angle over time, seen square to the body as far as the view allows.
 *
 * @returns  each a curve on the measurement's time base; see docs/measurement.md for frame, sign and unit
 */
export function otherMeasures(points: SmoothPoints, view: View, side: Side): OtherMeasures {
  const { working, frontal, yaw, roll, focalPx, isTurned, sources, upright } = view;
  const samples = points.timesMs.length;
  const of = (whose: Side, ...joints: Joint[]) => joints.map((joint) => points.point(`${whose}_${joint}`));
  const leg = of(side, 'hip', 'knee', 'ankle');
  const pair = (joint: Joint): PointPair => [
    points.point(`${side}_${joint}`),
    points.point(`${otherSide(side)}_${joint}`),
  ];
  const [hips, shoulders] = [pair('hip'), pair('shoulder')];
  const feet = [...leg, ...of(otherSide(side), 'hip', 'ankle')];
  const towardsMidline = -outwardSign(side);
  const legLength = 1 + frontal.thigh;

  const turned = isTurned ? reasonCode('view-turned') : 0;
  const curve = (joints: readonly SmoothPoint[], quantity: (i: number) => number | MissingReason): Curve => {
    const made = blankCurve(samples);
    for (let i = 0; i < samples; i++) {
      const missing = missingAt(joints, i) || turned;
      const value = missing === 0 ? quantity(i) : 0;
      if (typeof value === 'number') made.values[i] = value;
      made.missing[i] = typeof value === 'number' ? missing : reasonCode(value);
    }
    return made;
  };
  /** The same quantity counted from quiet standing, so that a tilted camera or an uneven pelvis does not count. */
  const fromStanding = (joints: readonly SmoothPoint[], quantity: (i: number) => number): Curve => {
    const { values, missing } = curve(joints, quantity);
    const standing = upright.map((value, i) => (missing[i] === 0 ? value : 0));
    const own = medianWhere(standing, (i) => values[i]!) ?? 0;
    values.forEach((value, i) => (values[i] = missing[i] === 0 ? value - own : 0));
    return { values, missing };
  };

  const { heel, toe, footSeen, segments } = working;
  const footDeg = footHeadingDeg(heel, toe, side, footSeen, segments.shank, focalPx) ?? 0;
  const axis = cosSin(footDeg - yaw.yawDeg);
  const trunkPx = trunkLengthPx(hips, shoulders, samples);
  const ofLeg = (quantity: (leg: FrontalLeg, side: Side, i: number) => number): OtherMeasure => ({
    curve: curve(leg, (i) => quantity(frontal, side, i)),
    band: errorBand(working.lifted, side, sources, quantity),
  });
  /** How far the hip stands below where a straight leg would hold it. */
  const sunk = ({ hip, ankle }: FrontalLeg, _: Side, i: number) => (hip.y[i]! - ankle.y[i]!) / legLength;
  const place = pelvisPlace(view, side);
  /** Half-width of the band of a distance between two points, as a share of another distance, px. */
  const share = (ofPx: number) =>
    ninetyPercent *
    Math.SQRT2 *
    Math.hypot(placingSd, working.jitter) *
    (working.segments.shank / Math.max(1, ofPx));

  return {
    'knee-over-foot': ofLeg((seen, _, i) => (towardsMidline * acrossFoot(seen, axis, i)) / legLength),
    'hip-over-knee': ofLeg((seen, _, i) => (towardsMidline * (seen.knee.x[i]! - seen.hip.x[i]!)) / legLength),
    'pelvic-drop': {
      curve: fromStanding(hips, (i) => {
        const [own, other] = [pointAt(hips[0], i), pointAt(hips[1], i)];
        return toDegrees(Math.atan2(other.y - own.y, Math.abs(own.x - other.x)));
      }),
      band: (i) => toDegrees(share(Math.abs(pointAt(hips[0], i).x - pointAt(hips[1], i).x))),
    },
    'trunk-lean': {
      curve: fromStanding([...hips, ...shoulders], (i) => {
        const pelvis = middleAt(hips, i);
        const girdle = middleAt(shoulders, i);
        // Beside the middle of the picture, what bends forward is seen from its side.
        const { x: right, z: ahead } = working.lifted.hip;
        const seenDeg = yaw.yawDeg + toDegrees(Math.atan2(right[i]!, ahead[i]!));
        return (
          -towardsMidline * leanDeg((girdle.x - pelvis.x) / trunkPx, (pelvis.y - girdle.y) / trunkPx, seenDeg)
        );
      }),
      // A trunk that bends forward by half a right angle turns as much of the yaw's uncertainty into lean.
      band: () =>
        Math.hypot(
          toDegrees(share(trunkPx)),
          ninetyPercent * Math.hypot(yaw.sdDeg * Math.SQRT1_2, roll.sdDeg),
        ),
    },
    'pelvis-place': {
      curve: curve(feet, (i) => place(i)?.value ?? 'no-stance'),
      band: (i) => place(i)?.band ?? 0,
    },
    depth: {
      curve: fromStanding(leg, (i) => sunk(frontal, side, i)),
      band: errorBand(working.lifted, side, sources, sunk),
    },
  };
}

/** How far the knee stands to the person's left of the foot's axis through the ankle, in shank lengths. */
function acrossFoot({ knee, ankle }: FrontalLeg, [cos, sin]: [number, number], i: number): number {
  return (knee.x[i]! - ankle.x[i]!) * cos + (knee.z[i]! - ankle.z[i]!) * sin;
}

/**
 * Sideways lean of the trunk: what its forward lean looks like from a turned view is taken off.
 *
 * @param aside  shoulders to the picture's right of the hips, and `up` above them, share of trunk length
 * @returns  degrees, to the picture's right positive
 */
function leanDeg(aside: number, up: number, yawDeg: number): number {
  const [cos, sin] = cosSin(yawDeg);
  const forward = Math.sqrt(Math.max(0, 1 - aside * aside - up * up));
  return toDegrees(Math.atan2(aside * cos - forward * sin, Math.hypot(up, forward * cos)));
}

/** Length of the trunk from hips to shoulders at its longest, px. */
function trunkLengthPx(hips: PointPair, shoulders: PointPair, samples: number): number {
  const points = [...hips, ...shoulders];
  let longest = 1;
  for (let i = 0; i < samples; i++) {
    if (missingAt(points, i) !== 0) continue;
    const pelvis = middleAt(hips, i);
    const girdle = middleAt(shoulders, i);
    longest = Math.max(longest, Math.hypot(girdle.x - pelvis.x, girdle.y - pelvis.y));
  }
  return longest;
}
