import { exerciseIds, findExercise, type ExerciseId } from '#core/exercises/exercises';
import type { HoldStage, RepetitionStage } from '#core/exercises/stage';
import { supports } from '#core/protocol/support';
import { planBounds, planRanges } from '../plan/planRanges';
import { loadSchema } from '../schema/loadSchema';
import { z } from '../schema/zod';

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

/** The stages of one exercise. */
export const stagesSchema = z.union([
  z.array(repetitionStage).min(1).max(mostStages),
  z.array(holdStage).min(1).max(mostStages),
]);

/** A practice's own stages of one exercise, from easier to harder. */
export interface OwnStages {
  exercise: ExerciseId;
  stages: z.infer<typeof stagesSchema>;
}

/** What the schema can't say; null where all is well. */
export function stagesFault({ exercise, stages }: OwnStages): string | null {
  const isHold = stages.some((stage) => 'holds' in stage);
  if (isHold !== (findExercise(exercise).kind === 'hold'))
    return `its stages of ${exercise} are of another kind of exercise`;
  if (new Set(stages.map(({ id }) => id)).size < stages.length)
    return `its stages of ${exercise} name one twice`;
  return null;
}

/** Version 1 of the small text that kept them before the library did. */
const earlierSchema = z.strictObject({
  format: z.literal('overfoot-stages'),
  version: z.literal(1),
  exercises: z.partialRecord(z.enum(exerciseIds), stagesSchema),
});

/**
 * The stages of a small text from before the library kept them.
 *
 * @returns  null where it can't be read
 */
export function readEarlierStages(text: string): OwnStages[] | null {
  try {
    const { exercises } = earlierSchema.parse(JSON.parse(text));
    const own = Object.entries(exercises).map(([exercise, stages]) => ({
      exercise: exercise as ExerciseId,
      stages,
    }));
    return own.every((one) => stagesFault(one) === null) ? own : null;
  } catch {
    return null;
  }
}

/** By exercise. */
export function practiceStages(entries: readonly OwnStages[]): PracticeStages {
  // As in the program's own, a figure that a stage says nothing of is left out.
  return Object.fromEntries(entries.map(({ exercise, stages }) => [exercise, stages])) as PracticeStages;
}

/** The stages that an exercise goes through: the practice's own, else the program's. */
export function stagesFor(id: ExerciseId, own: PracticeStages): readonly AnyStage[] {
  return own[id] ?? findExercise(id).stages;
}
