import type { HoldId } from '../holds';
import { otherSide, type Side } from '../../protocol/side';
import type { TaskId } from '../tasks';

/** A place in body heights: x to the person's left, y up from the floor, z ahead of them. */
export interface Place {
  x: number;
  y: number;
  z: number;
}

/** What a figure is drawn from. */
export interface FigurePose {
  head: Place;
  neck: Place;
  pelvis: Place;
  shoulder: Record<Side, Place>;
  hand: Record<Side, Place>;
  hip: Record<Side, Place>;
  knee: Record<Side, Place>;
  ankle: Record<Side, Place>;
  toe: Record<Side, Place>;
  prop: Prop | null;
}

/** Something that the person sits on, stands on or presses into. */
export interface Prop {
  kind: 'chair' | 'step' | 'ball';
  /** Middle of its top; a ball's centre. */
  at: Place;
}

/**
 * Lengths in body heights: Drillis & Contini 1966, as in Winter, table 4.1; half-breadths of hips and shoulders too.
 * The arm is upper arm and forearm, which are drawn straight.
 */
export const segmentLengths = {
  shank: 0.246,
  thigh: 0.245,
  trunk: 0.288,
  neck: 0.1,
  arm: 0.332,
  foot: 0.152,
  ankleHeight: 0.039,
  halfHips: 0.0955,
  halfShoulders: 0.1295,
} as const;

type FigureMoment = 'start' | 'end';

/** Where pelvis and feet are, with the right leg working; the rest follows from the lengths. */
interface Stance {
  pelvis: Place;
  /** The trunk's lean forward, degrees. */
  leanDeg: number;
  /** How far the arms are raised forward from hanging, degrees; 0 where nothing is said. */
  armDeg?: number;
  own: Place;
  free: Place;
  prop?: Prop;
}

const { shank, thigh, ankleHeight, halfHips } = segmentLengths;
const at = (x: number, y: number, z: number): Place => ({ x, y, z });
const floor = (x: number, z = 0): Place => at(x, ankleHeight, z);
/** Pelvis height on nearly straight legs, and on a seat on which the thigh lies level. */
const upright = ankleHeight + 0.995 * (shank + thigh);
const seated = ankleHeight + shank;
const seatBehind = -0.96 * thigh;
const chair: Prop = { kind: 'chair', at: at(0, seated - 0.04, seatBehind) };
const ownX = -halfHips;
const stepHeight = 0.09;
const step: Prop = { kind: 'step', at: at(ownX - 0.01, stepHeight, 0.03) };
const ball: Prop = { kind: 'ball', at: at(ownX, 0.055, 0.21) };

const stances: Record<TaskId | HoldId, Record<FigureMoment, Stance>> = {
  'split-stance-sit-to-stand': {
    start: {
      pelvis: at(0, seated, seatBehind),
      leanDeg: 0,
      armDeg: 45,
      own: floor(ownX),
      free: floor(halfHips, -0.13),
      prop: chair,
    },
    end: {
      pelvis: at(0, upright - 0.006, -0.04),
      leanDeg: 0,
      own: floor(ownX),
      free: floor(halfHips, -0.13),
      prop: chair,
    },
  },
  'single-leg-sit-to-stand': {
    start: {
      pelvis: at(0, seated, seatBehind),
      leanDeg: 0,
      armDeg: 45,
      own: floor(ownX),
      free: at(halfHips, 0.1, 0.06),
      prop: chair,
    },
    end: {
      pelvis: at(-0.03, upright - 0.004, -0.01),
      leanDeg: 0,
      own: floor(ownX),
      free: at(halfHips, 0.12, 0.12),
      prop: chair,
    },
  },
  'single-leg-squat': {
    start: {
      pelvis: at(-0.03, upright, 0),
      leanDeg: 0,
      own: floor(ownX),
      free: at(halfHips - 0.04, 0.16, -0.2),
    },
    end: {
      pelvis: at(-0.03, upright - 0.1, -0.12),
      leanDeg: 28,
      armDeg: 55,
      own: floor(ownX),
      free: at(halfHips - 0.04, 0.14, -0.26),
    },
  },
  'sliding-leg-squat': {
    start: { pelvis: at(-0.02, upright, 0), leanDeg: 0, own: floor(ownX), free: floor(halfHips) },
    end: {
      pelvis: at(-0.04, upright - 0.12, -0.12),
      leanDeg: 28,
      armDeg: 55,
      own: floor(ownX),
      free: floor(halfHips + 0.24),
    },
  },
  'lateral-step-down': {
    start: {
      ...{ pelvis: at(-0.03, upright + stepHeight, 0), leanDeg: 0, prop: step },
      ...{ own: at(ownX, ankleHeight + stepHeight, 0), free: at(halfHips, ankleHeight + stepHeight, 0.02) },
    },
    end: {
      ...{ pelvis: at(-0.03, upright - 0.012, -0.09), leanDeg: 18, armDeg: 40, prop: step },
      ...{ own: at(ownX, ankleHeight + stepHeight, 0), free: at(halfHips, ankleHeight + 0.012, 0) },
    },
  },
  'hip-abduction-on-bent-leg': {
    start: {
      pelvis: at(-0.03, upright - 0.025, -0.04),
      leanDeg: 8,
      own: floor(ownX),
      free: at(halfHips, 0.06, -0.02),
    },
    end: {
      pelvis: at(-0.03, upright - 0.025, -0.04),
      leanDeg: 8,
      own: floor(ownX),
      free: at(0.36, 0.14, -0.03),
    },
  },
  'two-legged-bend': {
    start: { pelvis: at(0, upright, 0), leanDeg: 0, own: floor(ownX), free: floor(halfHips) },
    end: {
      pelvis: at(0, upright - 0.12, -0.13),
      leanDeg: 30,
      armDeg: 55,
      own: floor(ownX),
      free: floor(halfHips),
    },
  },
  'quad-press-hold': {
    start: {
      pelvis: at(0, 0.06, 0),
      leanDeg: -12,
      armDeg: -8,
      own: floor(ownX, 0.46),
      free: floor(halfHips, 0.46),
      prop: ball,
    },
    end: {
      pelvis: at(0, 0.06, 0),
      leanDeg: -12,
      armDeg: -8,
      own: floor(ownX, 0.484),
      free: floor(halfHips, 0.46),
      prop: ball,
    },
  },
};

/**
 * A figure at the start or the far end of a task.
 *
 * @returns  body heights; each segment as long as its length says, knees bent forward
 * Source:   postures: common practice, no source
 */
export function figurePose(task: TaskId | HoldId, side: Side, moment: FigureMoment): FigurePose {
  const { pelvis, leanDeg, armDeg = 0, own, free, prop } = stances[task][moment];
  const lean = (leanDeg * Math.PI) / 180;
  const along = (from: Place, length: number): Place => ({
    ...from,
    y: from.y + length * Math.cos(lean),
    z: from.z + length * Math.sin(lean),
  });
  const neck = along(pelvis, segmentLengths.trunk);
  const beside = (middle: Place, half: number) => ({ x: middle.x + half, y: middle.y, z: middle.z });
  const leg = (x: 1 | -1, ankle: Place) => {
    const hip = beside(pelvis, x * halfHips);
    const toe = {
      ...ankle,
      y: Math.max(0.008, ankle.y - ankleHeight + 0.008),
      z: ankle.z + 0.75 * segmentLengths.foot,
    };
    const shoulder = beside(neck, x * segmentLengths.halfShoulders);
    return { hip, ankle, knee: kneeBetween(hip, ankle), toe, shoulder, hand: handOf(shoulder, x, armDeg) };
  };
  const legs = { right: leg(-1, own), left: leg(1, free) };
  const each = <Key extends keyof typeof legs.left>(key: Key) => ({
    left: legs.left[key],
    right: legs.right[key],
  });
  const pose: FigurePose = {
    ...{ head: along(neck, segmentLengths.neck), neck, pelvis, prop: prop ?? null },
    ...{
      shoulder: each('shoulder'),
      hand: each('hand'),
      hip: each('hip'),
      knee: each('knee'),
      ankle: each('ankle'),
      toe: each('toe'),
    },
  };
  return side === 'right' ? pose : mirrored(pose);
}

/** How far the arms hang away from the trunk, degrees: enough to be told from it. */
const armSpreadDeg = 9;

/** The hand one arm's length from the shoulder, raised forward by so many degrees. */
function handOf(shoulder: Place, x: 1 | -1, raisedDeg: number): Place {
  const [raised, spread] = [(raisedDeg * Math.PI) / 180, (armSpreadDeg * Math.PI) / 180];
  const inPlane = segmentLengths.arm * Math.cos(spread);
  return {
    x: shoulder.x + x * segmentLengths.arm * Math.sin(spread),
    y: shoulder.y - inPlane * Math.cos(raised),
    z: shoulder.z + inPlane * Math.sin(raised),
  };
}

/** The knee one thigh from the hip and one shank from the ankle, ahead of the line between them; straight where that is too long. */
function kneeBetween(hip: Place, ankle: Place): Place {
  const line = { x: ankle.x - hip.x, y: ankle.y - hip.y, z: ankle.z - hip.z };
  const length = Math.hypot(line.x, line.y, line.z);
  const share = (thigh ** 2 - shank ** 2 + length ** 2) / (2 * length ** 2);
  const out = Math.sqrt(Math.max(0, thigh ** 2 - (share * length) ** 2));
  // Ahead and, for legs that lie, up: square to the line.
  const ahead = { x: 0, y: -line.z, z: line.y };
  const size = Math.hypot(ahead.y, ahead.z) || 1;
  const sign = ahead.z < 0 || (ahead.z === 0 && ahead.y < 0) ? -1 : 1;
  return {
    x: hip.x + share * line.x,
    y: hip.y + share * line.y + (sign * out * ahead.y) / size,
    z: hip.z + share * line.z + (sign * out * ahead.z) / size,
  };
}

function mirrored({ head, neck, pelvis, prop, ...joints }: FigurePose): FigurePose {
  const over = (place: Place): Place => ({ ...place, x: -place.x });
  const swap = (pair: Record<Side, Place>): Record<Side, Place> => ({
    left: over(pair[otherSide('left')]),
    right: over(pair[otherSide('right')]),
  });
  return {
    ...{ head: over(head), neck: over(neck), pelvis: over(pelvis) },
    ...{
      shoulder: swap(joints.shoulder),
      hand: swap(joints.hand),
      hip: swap(joints.hip),
      knee: swap(joints.knee),
    },
    ...{ ankle: swap(joints.ankle), toe: swap(joints.toe) },
    prop: prop && { ...prop, at: over(prop.at) },
  };
}
