import { bridgeHold } from './each/bridgeHold';
import { hipAbductionOnBentLeg } from './each/hipAbductionOnBentLeg';
import { lateralStepDown } from './each/lateralStepDown';
import { quadPressHold } from './each/quadPressHold';
import { sideBridgeHold } from './each/sideBridgeHold';
import { singleLegSitToStand } from './each/singleLegSitToStand';
import { singleLegSquat } from './each/singleLegSquat';
import { singleLegStanceHold } from './each/singleLegStanceHold';
import { slidingLegSquat } from './each/slidingLegSquat';
import { splitStanceSitToStand } from './each/splitStanceSitToStand';
import { twoLeggedBend } from './each/twoLeggedBend';
import { wallSitHold } from './each/wallSitHold';
import type { HoldDefinition, TaskDefinition } from './exercise';

/** Every exercise, in the order in which they are offered for measuring and named in the documents' schemas. */
const listed = [
  splitStanceSitToStand,
  singleLegSitToStand,
  singleLegSquat,
  slidingLegSquat,
  lateralStepDown,
  hipAbductionOnBentLeg,
  twoLeggedBend,
  quadPressHold,
  bridgeHold,
  singleLegStanceHold,
  wallSitHold,
  sideBridgeHold,
] as const;

type Listed = (typeof listed)[number];
export type TaskId = Extract<Listed, { kind: 'task' }>['id'];
export type HoldId = Extract<Listed, { kind: 'hold' }>['id'];
export type ExerciseId = TaskId | HoldId;

export type Task = TaskDefinition<TaskId>;
type Hold = HoldDefinition<HoldId>;
/** What a plan can contain: a task that is repeated, or a position that is held. */
export type Exercise = Task | Hold;

export const exercises: readonly Exercise[] = listed;
const tasks: readonly Task[] = listed.filter((exercise) => exercise.kind === 'task');
const holds: readonly Hold[] = listed.filter((exercise) => exercise.kind === 'hold');

export const taskIds: readonly TaskId[] = tasks.map(({ id }) => id);
export const holdIds: readonly HoldId[] = holds.map(({ id }) => id);
export const exerciseIds: readonly ExerciseId[] = exercises.map(({ id }) => id);

export function findTask(id: TaskId): Task {
  return tasks.find((task) => task.id === id)!;
}

export function findExercise(id: ExerciseId): Exercise {
  return exercises.find((exercise) => exercise.id === id)!;
}
