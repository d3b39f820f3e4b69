import { otherSide, type Side } from '../protocol/side';
import { cosSin } from '../view/bodyFrame';
import { errorBand, ninetyPercent, placingSd } from '../view/errorBand';
import { footHeadingDeg } from '../view/footHeadingDeg';
import { medianWhere, type FrontalLeg } from '../view/frontalKneeAngle';
import { blankCurve, reasonCode, type Curve } from './curve';
import type { View } from './seeView';
import { missingAt, type SmoothPoint, type SmoothPoints } from './smoothPoints';

/** What is measured beside the knee angle; docs/measurement.md says each in full. */
export const otherMeasureIds = [
  'knee-over-foot',
  'hip-over-knee',
  'pelvic-drop',
  'trunk-lean',
  'pelvis-place',
  'depth',
] as const;
export type OtherMeasureId = (typeof otherMeasureIds)[number];
/** A measure over time, and the half-width of its error band at a sample, in its own unit. */
export interface OtherMeasure {
  curve: Curve;
  band(sample: number): number;
}
export type OtherMeasures = Record<OtherMeasureId, OtherMeasure>;

/** One value a measure. */
export function mapOthers<T>(make: (id: OtherMeasureId) => T): Record<OtherMeasureId, T> {
  return Object.fromEntries(otherMeasureIds.map((id) => [id, make(id)])) as Record<OtherMeasureId, T>;
}

/**
 * Usual turn-out of a foot, degrees: what the big toe, which the network marks, hides (see footHeadingDeg). Common
 * practice, no source.
 */
const usualToeOutDeg = 7;
/** Feet closer together than this, in shank lengths, leave no room to say where the pelvis stands between them. */
const leastStance = 0.2;

type Joint = 'hip' | 'knee' | 'ankle' | 'shoulder';

/**
 * Measures beside the knee angle over time, seen square to the body as far as the view allows.
 *
 * @param hipHeight  share of leg length, any origin
 * @returns  each a curve on the measurement's time base; see docs/measurement.md for frame, sign and unit
 */
export function otherMeasures(
  points: SmoothPoints,
  view: View,
  side: Side,
  hipHeight: Float64Array,
): OtherMeasures {
  const { working, frontal, yaw, isTurned, sources, upright } = view;
  const samples = points.timesMs.length;
  const of = (whose: Side, ...joints: Joint[]) => joints.map((joint) => points.point(`${whose}_${joint}`));
  const leg = of(side, 'hip', 'knee', 'ankle');
  const hips = [...of(side, 'hip'), ...of(otherSide(side), 'hip')];
  const trunk = [...hips, ...of(side, 'shoulder'), ...of(otherSide(side), 'shoulder')];
  const feet = [...hips, ...of(side, 'ankle'), ...of(otherSide(side), 'ankle')];
  const towardsMidline = side === 'left' ? -1 : 1;
  const legLength = 1 + frontal.thigh;

  const curve = (joints: readonly SmoothPoint[], quantity: (i: number) => number | null): Curve => {
    const made = blankCurve(samples);
    for (let i = 0; i < samples; i++) {
      const missing = missingAt(joints, i) || (isTurned ? reasonCode('view-turned') : 0);
      const value = missing === 0 ? quantity(i) : null;
      if (value === null) made.missing[i] = missing || reasonCode('joint-unseen');
      else made.values[i] = value;
    }
    return made;
  };
  /** The same quantity counted from quiet standing, so that a tilted camera or an uneven pelvis does not count. */
  const fromStanding = (joints: readonly SmoothPoint[], quantity: (i: number) => number): Curve => {
    const when = upright.map((value, i) => (missingAt(joints, i) === 0 ? value : 0));
    const own = medianWhere(when, quantity) ?? 0;
    return curve(joints, (i) => quantity(i) - own);
  };

  const footDeg = footHeadingDeg(working.heel, working.toe, working.footSeen, working.segments.shank) ?? 0;
  const axisDeg = footDeg - yaw.yawDeg - towardsMidline * usualToeOutDeg;
  const trunkPx = trunkLengthPx(trunk, samples);
  const ofLeg = (quantity: (leg: FrontalLeg, side: Side, i: number) => number): OtherMeasure => ({
    curve: curve(leg, (i) => quantity(frontal, side, i)),
    band: (i) => errorBand(working.lifted, i, side, sources, quantity),
  });
  /** Half-width of the band of a distance between two points, as a share of another distance, px. */
  const share = (ofPx: number) =>
    ninetyPercent *
    Math.SQRT2 *
    Math.hypot(placingSd, working.jitter) *
    (working.segments.shank / Math.max(1, ofPx));
  const x = (index: number, joints: readonly SmoothPoint[], i: number) => joints[index]!.xPx.values[i]!;
  const y = (index: number, joints: readonly SmoothPoint[], i: number) => joints[index]!.yPx.values[i]!;

  return {
    'knee-over-foot': ofLeg((seen, _, i) => (towardsMidline * acrossFoot(seen, axisDeg, i)) / legLength),
    'hip-over-knee': ofLeg((seen, _, i) => (towardsMidline * (seen.knee.x[i]! - seen.hip.x[i]!)) / legLength),
    'pelvic-drop': {
      curve: fromStanding(hips, (i) =>
        degrees(Math.atan2(y(1, hips, i) - y(0, hips, i), Math.abs(x(0, hips, i) - x(1, hips, i)))),
      ),
      band: (i) => degrees(share(Math.abs(x(0, hips, i) - x(1, hips, i)))),
    },
    'trunk-lean': {
      curve: fromStanding(trunk, (i) => {
        const asidePx = (x(2, trunk, i) + x(3, trunk, i) - x(0, trunk, i) - x(1, trunk, i)) / 2;
        const upPx = (y(0, trunk, i) + y(1, trunk, i) - y(2, trunk, i) - y(3, trunk, i)) / 2;
        return -towardsMidline * leanDeg(asidePx / trunkPx, upPx / trunkPx, yaw.yawDeg);
      }),
      // A trunk that bends forward by half a right angle turns as much of the yaw's uncertainty into lean.
      band: () => Math.hypot(degrees(share(trunkPx)), ninetyPercent * yaw.sdDeg * Math.SQRT1_2),
    },
    'pelvis-place': {
      curve: curve(feet, (i) => {
        const stancePx = x(2, feet, i) - x(3, feet, i);
        if (Math.abs(stancePx) < leastStance * working.segments.shank) return null;
        return ((x(0, feet, i) + x(1, feet, i)) / 2 - x(3, feet, i)) / stancePx;
      }),
      band: (i) => share(Math.abs(x(2, feet, i) - x(3, feet, i))),
    },
    depth: {
      curve: fromStanding(hips, (i) => -hipHeight[i]!),
      band: () => share(working.segments.shank) / legLength,
    },
  };
}

/** How far the knee stands to the person's left of the foot's axis through the ankle, in shank lengths. */
function acrossFoot({ knee, ankle }: FrontalLeg, axisDeg: number, i: number): number {
  const [cos, sin] = cosSin(axisDeg);
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
  return degrees(Math.atan2(aside * cos - forward * sin, Math.hypot(up, forward * cos)));
}

/** Length of the trunk from hips to shoulders at its longest, px. */
function trunkLengthPx(trunk: readonly SmoothPoint[], samples: number): number {
  let longest = 1;
  for (let i = 0; i < samples; i++) {
    if (missingAt(trunk, i) !== 0) continue;
    const mean = (of: 'xPx' | 'yPx', a: number, b: number) =>
      (trunk[a]![of].values[i]! + trunk[b]![of].values[i]!) / 2;
    longest = Math.max(
      longest,
      Math.hypot(mean('xPx', 0, 1) - mean('xPx', 2, 3), mean('yPx', 0, 1) - mean('yPx', 2, 3)),
    );
  }
  return longest;
}

function degrees(rad: number): number {
  return (rad * 180) / Math.PI;
}
