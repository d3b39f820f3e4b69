import { findExercise, type ExerciseId } from '../exercises/exercises';
import type { HoldStage, RepetitionStage } from '../exercises/stage';
import type { Proposal } from './proposal';

/** Where an item stands: its exercise, the stage, and the stages it goes through. */
export interface StagePlace {
  exercise: ExerciseId;
  stage: string;
  /** A practice's own; left out for those of the library. */
  stages?: readonly (RepetitionStage | HoldStage)[];
}

interface Placed {
  stage: RepetitionStage | HoldStage;
  /** From 1. */
  number: number;
  of: number;
}

/** The stages of an exercise, from easier to harder. */
export type StagesOf = (id: ExerciseId) => readonly (RepetitionStage | HoldStage)[];
const stagesOfLibrary: StagesOf = (id) => findExercise(id).stages;

/** What a proposal comes to in an item's stages. */
export type NextStep =
  | ({ kind: 'same'; restDayFirst: boolean; repetitions: number | null } & Placed)
  | ({ kind: 'other-stage' } & Placed)
  | { kind: 'other-exercise'; exercise: ExerciseId; stage: RepetitionStage | HoldStage }
  | { kind: 'no-harder' }
  | { kind: 'no-easier' }
  | { kind: 'hold' };

/**
 * What a proposal means for an item: which stage, from how many repetitions.
 *
 * After the hardest stage comes the easiest of the exercise that this one leads to: the easier start is the safer
 * proposal, and the therapist may choose another.
 *
 * @param stagesOf  where a practice has its own; those of the library where it is left out
 * @throws  RangeError where the stages have no such stage
 */
export function nextStep(
  { proposal, repetitions }: Proposal,
  place: StagePlace,
  stagesOf = stagesOfLibrary,
): NextStep {
  if (proposal === 'hold') return { kind: 'hold' };
  const exercise = findExercise(place.exercise);
  const stages = place.stages ?? stagesOf(place.exercise);
  const at = stages.findIndex(({ id }) => id === place.stage);
  if (at < 0)
    throw new RangeError(
      `There is no stage "${place.stage}", only ${stages.map(({ id }) => `"${id}"`).join(', ')}.`,
    );
  const placed = (index: number) => ({ stage: stages[index]!, number: index + 1, of: stages.length });
  if (proposal === 'step-down')
    return at === 0 ? { kind: 'no-easier' } : { kind: 'other-stage', ...placed(at - 1) };
  if (proposal !== 'step-up')
    return {
      kind: 'same',
      restDayFirst: proposal === 'repeat',
      repetitions: repetitions ?? null,
      ...placed(at),
    };
  if (at + 1 < stages.length) return { kind: 'other-stage', ...placed(at + 1) };
  const leadsTo = exercise.kind === 'task' ? exercise.leadsTo : undefined;
  if (leadsTo === undefined) return { kind: 'no-harder' };
  const harder = findExercise(leadsTo as ExerciseId);
  return { kind: 'other-exercise', exercise: harder.id, stage: stagesOf(harder.id)[0]! };
}

/** How far a plan is changed without asking: not even proposed, proposed, or within the stage at home. */
export const autoSteps = ['never', 'propose', 'within-plan'] as const;
export type AutoStep = (typeof autoSteps)[number];

/**
 * Whether the patient's device may carry a proposal out by itself: more repetitions, or the same after a day of rest,
 * where the plan allows it. A stage is only ever changed by the therapist, and so is a hold ended.
 */
export function appliesAtHome({ proposal }: Proposal, autoStep: AutoStep): boolean {
  return autoStep === 'within-plan' && (proposal === 'more' || proposal === 'repeat');
}
