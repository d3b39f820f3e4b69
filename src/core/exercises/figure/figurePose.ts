import { otherSide, type Side } from '../../protocol/side';
import { findExercise, type ExerciseId } from '../exercises';
import { segmentLengths, type FigureMoment, type Place, type Prop } from './stance';

/** What a figure is drawn from. */
export interface FigurePose {
  head: Place;
  neck: Place;
  pelvis: Place;
  shoulder: Record<Side, Place>;
  elbow: Record<Side, Place>;
  hand: Record<Side, Place>;
  hip: Record<Side, Place>;
  knee: Record<Side, Place>;
  ankle: Record<Side, Place>;
  toe: Record<Side, Place>;
  prop: Prop | null;
}

const { shank, thigh, upperArm, forearm, ankleHeight, halfHips } = segmentLengths;

/**
 * A figure at the start or the far end of an exercise.
 *
 * @returns  body heights; each segment as long as its length says, knees bent forward
 */
export function figurePose(id: ExerciseId, side: Side, moment: FigureMoment): FigurePose {
  const { pelvis, leanDeg, sideLeanDeg = 0, armDeg = 0, ...rest } = findExercise(id).figure[moment];
  const { own, free, isOnForearm = false, prop = null } = rest;
  const lean = (leanDeg * Math.PI) / 180;
  const sideLean = (sideLeanDeg * Math.PI) / 180;
  /** Moved as the upright body has it; leaning sideways turns that. */
  const moved = (from: Place, { x, y, z }: Place): Place => ({
    x: from.x + x * Math.cos(sideLean) - y * Math.sin(sideLean),
    y: from.y + x * Math.sin(sideLean) + y * Math.cos(sideLean),
    z: from.z + z,
  });
  const along = (from: Place, length: number) =>
    moved(from, { x: 0, y: length * Math.cos(lean), z: length * Math.sin(lean) });
  const neck = along(pelvis, segmentLengths.trunk);
  const beside = (middle: Place, half: number) => moved(middle, { x: half, y: 0, z: 0 });
  const armOf = (shoulder: Place, x: 1 | -1) => {
    if (isOnForearm && x === -1) {
      const elbow = { ...shoulder, y: shoulder.y - upperArm };
      return { elbow, hand: { ...elbow, z: elbow.z + forearm } };
    }
    const reach = armReach(x, armDeg);
    const share = (length: number) =>
      moved(shoulder, { x: length * reach.x, y: length * reach.y, z: length * reach.z });
    return { elbow: share(upperArm), hand: share(upperArm + forearm) };
  };
  const leg = (x: 1 | -1, ankle: Place) => {
    const hip = beside(pelvis, x * halfHips);
    const toe = {
      ...ankle,
      y: Math.max(0.008, ankle.y - ankleHeight + 0.008),
      z: ankle.z + 0.75 * segmentLengths.foot,
    };
    const shoulder = beside(neck, x * segmentLengths.halfShoulders);
    return { hip, ankle, knee: kneeBetween(hip, ankle), toe, shoulder, ...armOf(shoulder, x) };
  };
  const legs = { right: leg(-1, own), left: leg(1, free) };
  const each = <Key extends keyof typeof legs.left>(key: Key) => ({
    left: legs.left[key],
    right: legs.right[key],
  });
  const pose: FigurePose = {
    head: along(neck, segmentLengths.neck),
    neck,
    pelvis,
    prop,
    shoulder: each('shoulder'),
    elbow: each('elbow'),
    hand: each('hand'),
    hip: each('hip'),
    knee: each('knee'),
    ankle: each('ankle'),
    toe: each('toe'),
  };
  return side === 'right' ? pose : mirrored(pose);
}

/** How far the arms hang away from the trunk, degrees: enough to be seen apart from it. */
const armSpreadDeg = 9;

/** Which way a straight arm reaches that is raised forward by this many degrees; of length 1. */
function armReach(x: 1 | -1, raisedDeg: number): Place {
  const [raised, spread] = [(raisedDeg * Math.PI) / 180, (armSpreadDeg * Math.PI) / 180];
  return {
    x: x * Math.sin(spread),
    y: -Math.cos(spread) * Math.cos(raised),
    z: Math.cos(spread) * Math.sin(raised),
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
    head: over(head),
    neck: over(neck),
    pelvis: over(pelvis),
    shoulder: swap(joints.shoulder),
    elbow: swap(joints.elbow),
    hand: swap(joints.hand),
    hip: swap(joints.hip),
    knee: swap(joints.knee),
    ankle: swap(joints.ankle),
    toe: swap(joints.toe),
    prop: prop && { ...prop, at: over(prop.at) },
  };
}
