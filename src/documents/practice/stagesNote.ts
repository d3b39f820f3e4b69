import { exerciseIds, findExercise, type ExerciseId } from '#core/exercises/exercises';
import type { HoldStage, RepetitionStage } from '#core/exercises/stage';
import { supports } from '#core/protocol/support';
import { planBounds, planRanges } from '../plan/planRanges';
import { loadSchema } from '../schema/loadSchema';
import { z } from '../schema/zod';

/** Name of the small text that keeps them. */
export const stagesNoteName = 'stages';

/** More than any exercise needs. */
export const mostStages = 20;
/** Longest words of a stage, characters. */
export const longestStageWords = 160;

export type AnyStage = RepetitionStage | HoldStage;
/** A practice's own stages of the exercises whose stages it changed, from easier to harder. */
export type PracticeStages = Partial<Record<ExerciseId, readonly AnyStage[]>>;

const within = ({ min, max }: { min: number; max: number }) => z.number().min(min).max(max);
const whole = ({ min, max }: { min: number; max: number }) => z.int().min(min).max(max);

const common = {
  id: z.string().min(1).max(planBounds.stage),
  words: z.string().min(1).max(longestStageWords),
  seatHeightCm: within(planRanges.seatHeightCm).optional(),
  stepHeightCm: within(planRanges.stepHeightCm).optional(),
  bendDeg: within(planRanges.bendDeg).optional(),
  support: z.enum(supports).optional(),
  load: loadSchema.optional(),
  tempo: z
    .strictObject({
      downSeconds: within(planRanges.downSeconds).optional(),
      pauseSeconds: within(planRanges.pauseSeconds).optional(),
    })
    .optional(),
};
const repetitionStage = z.strictObject({
  ...common,
  start: whole(planRanges.repetitions),
  upTo: z.strictObject({ min: whole(planRanges.upTo), max: whole(planRanges.upTo) }),
});
const holdStage = z.strictObject({
  ...common,
  holds: z.strictObject({ count: whole(planRanges.holds), seconds: whole(planRanges.holdSeconds) }),
});

/** Bumped when a field is added, removed or changes its meaning. */
const stagesVersion = 1;
const noteSchema = z.strictObject({
  format: z.literal('overfoot-stages'),
  version: z.literal(stagesVersion),
  exercises: z.partialRecord(
    z.enum(exerciseIds),
    z.union([z.array(repetitionStage).min(1).max(mostStages), z.array(holdStage).min(1).max(mostStages)]),
  ),
});

/**
 * The stages that a practice keeps.
 *
 * @param text  as it is kept; null where nothing is
 * @returns  null where it can't be read: nothing may then be written over it unasked
 */
export function readStages(text: string | null): PracticeStages | null {
  if (text === null || text === '') return {};
  try {
    // As in the program's own, a figure that a stage says nothing of is left out.
    return noteSchema.parse(JSON.parse(text)).exercises as PracticeStages;
  } catch {
    return null;
  }
}

export function writeStages(exercises: PracticeStages): string {
  return JSON.stringify({ format: 'overfoot-stages', version: stagesVersion, exercises });
}

/** The stages that an exercise goes through: the practice's own, else the program's. */
export function stagesFor(id: ExerciseId, own: PracticeStages): readonly AnyStage[] {
  return own[id] ?? findExercise(id).stages;
}
