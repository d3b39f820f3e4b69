import type { NotedConditions, SetConditions } from '#core/conditions/setConditions';
import { findExercise } from '#core/exercises/exercises';
import type { SessionSet } from './sessionDocument';

/** Where nothing was noted with a set; without a plan, no set is a test. */
const nothingNoted: NotedConditions = {
  stage: null,
  seatHeightCm: null,
  stepHeightCm: null,
  support: null,
  load: null,
  footwear: null,
  freeLeg: null,
  feedback: null,
  isTest: false,
};

/**
 * Under what a set was done and measured, as far as it is known: one way for everything that compares sets.
 *
 * @param asked  what its plan says, for sessions from before version 4; null where that is not known
 * @returns  null for a hold, which is not measured
 */
export function setConditions(
  { task, side, conditions }: Pick<SessionSet, 'task' | 'side' | 'conditions'>,
  measured: Pick<SetConditions, 'bendsFilmed' | 'measuringVersion'>,
  asked: NotedConditions | null,
): SetConditions | null {
  const exercise = findExercise(task);
  if (exercise.kind !== 'task') return null;
  return { ...(conditions ?? asked ?? nothingNoted), task: exercise.id, side, ...measured };
}
