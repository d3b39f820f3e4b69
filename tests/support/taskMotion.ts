import { taskIds, type TaskId } from '#core/exercises/exercises';
import type { Side } from '#core/protocol/side';
import { plus, vector, type Vector } from './space';
import { proportions, type FootPlace, type Posture } from './stickBody';

export const syntheticTasks = taskIds;
export type SyntheticTask = TaskId;

/** 'rise': seated, up, seated again; 'dip': standing, down, standing again. */
export function shapeOf(task: SyntheticTask): 'rise' | 'dip' {
  return task.endsWith('sit-to-stand') ? 'rise' : 'dip';
}

/** What the body does at one instant. */
export interface Motion {
  /** 0 at rest, 1 at the far end: standing for a rise, deepest for a dip. */
  progress: number;
  /** Trunk bent for standing up, 0 to 1; for tasks with a seat. */
  bow: number;
  /** Frontal-plane angle of the working knee, degrees, inward positive. */
  kneeDeg: number;
  pelvicDropDeg: number;
  trunkSideDeg: number;
  /** How far the person stands to the side of the place, m / body height, towards their left. */
  aside: number;
  toeOutDeg: number;
}

const { ankleHeight, halfHips, thigh, shank } = proportions;
/** Standing, the leg is stretched to this share of its length: a knee that is not locked. */
const standing = ankleHeight + 0.985 * (thigh + shank);
const stepHeight = 0.11;

/** Middle of the hips at rest and at the far end of each task; working leg at +x. */
const paths: Record<SyntheticTask, [rest: Vector, far: Vector]> = {
  'split-stance-sit-to-stand': [vector(0, 0.335, -0.205), vector(0, standing, -0.015)],
  'single-leg-sit-to-stand': [vector(0, 0.335, -0.205), vector(0, standing, -0.015)],
  'single-leg-squat': [vector(-0.015, standing, -0.015), vector(0, standing - 0.105, -0.085)],
  'sliding-leg-squat': [vector(0, standing, -0.015), vector(0.03, standing - 0.115, -0.08)],
  'lateral-step-down': [vector(0, standing + stepHeight, -0.015), vector(0, standing + 0.002, -0.08)],
  'hip-abduction-on-bent-leg': [vector(0.02, standing - 0.03, -0.03), vector(0.02, standing - 0.03, -0.03)],
  'two-legged-bend': [vector(0, standing, -0.015), vector(0, standing - 0.12, -0.09)],
};

/** The body of somebody doing a task; hips, feet and trunk follow from how far the movement has got. */
export function postureOf(task: SyntheticTask, side: Side, motion: Motion): Posture {
  const { progress, kneeDeg, toeOutDeg } = motion;
  const towards = side === 'left' ? 1 : -1;
  const [rest, far] = paths[task];
  const hips = between(rest, far, progress);
  const flat = (ankle: Vector, heelUpDeg = 0): FootPlace => ({ ankle, toeOutDeg, heelUpDeg });
  const working = flat(workingAnkle(task));
  const other = otherFoot(task, progress, hips, flat);
  const mirrored = (place: Vector) => vector(towards * place.x + motion.aside, place.y, place.z);
  const stepping = (foot: FootPlace, lift: number) => ({
    ...foot,
    ankle: plus(mirrored(foot.ankle), vector(0, lift, 0)),
  });
  const stride =
    Math.sin((2 * Math.PI * towards * motion.aside) / 0.4) * Math.min(0.03, Math.abs(motion.aside));
  const [workingFoot, freeFoot] = [
    stepping(working, Math.max(0, stride)),
    stepping(other, Math.max(0, -stride)),
  ];
  const freeKneeDeg = task === 'two-legged-bend' ? kneeDeg : 0;
  return {
    hips: mirrored(hips),
    pelvisLeftDownDeg: -towards * motion.pelvicDropDeg,
    trunkForwardDeg: shapeOf(task) === 'rise' ? 3 + 40 * motion.bow * (1 - progress) : 3 + 25 * progress,
    trunkLeftDeg: towards * motion.trunkSideDeg,
    feet: side === 'left' ? { left: workingFoot, right: freeFoot } : { left: freeFoot, right: workingFoot },
    kneeInwardDeg:
      side === 'left' ? { left: kneeDeg, right: freeKneeDeg } : { left: freeKneeDeg, right: kneeDeg },
  };
}

function workingAnkle(task: SyntheticTask): Vector {
  if (task === 'single-leg-squat') return vector(0.03, ankleHeight, 0);
  if (task === 'lateral-step-down') return vector(halfHips, ankleHeight + stepHeight, 0);
  return vector(halfHips, ankleHeight, 0);
}

function otherFoot(
  task: SyntheticTask,
  progress: number,
  hips: Vector,
  flat: (ankle: Vector, heelUpDeg?: number) => FootPlace,
): FootPlace {
  switch (task) {
    case 'split-stance-sit-to-stand': // behind, on its toes
      return flat(vector(-halfHips, ankleHeight + 0.045, -0.17), 25);
    case 'single-leg-sit-to-stand': // held out in front, lower the higher the body
      return flat(vector(-halfHips, hips.y - 0.16 - 0.24 * progress, hips.z + 0.455 - 0.23 * progress), -40);
    case 'single-leg-squat': // held up behind, sinking with the body
      return flat(vector(-halfHips, ankleHeight + 0.17 - 0.08 * progress, -0.17 - 0.04 * progress), 50);
    case 'sliding-leg-squat': // slides out to its own side
      return flat(vector(-halfHips - 0.26 * progress, ankleHeight + 0.006 * progress, 0));
    case 'lateral-step-down': // hangs next to the step, straight
      return flat(vector(-0.075, hips.y - 0.98 * (thigh + shank), hips.z + 0.01));
    case 'hip-abduction-on-bent-leg': // lifted out to its own side, straight
      return flat(vector(-halfHips - 0.16 * progress, ankleHeight + 0.02 + 0.04 * progress, -0.02));
    case 'two-legged-bend':
      return flat(vector(-halfHips, ankleHeight, 0));
  }
}

function between(a: Vector, b: Vector, share: number): Vector {
  return vector(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y), a.z + share * (b.z - a.z));
}
