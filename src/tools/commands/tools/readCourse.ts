import { z } from 'zod';
import { exerciseIds, findExercise } from '#core/exercises/exercises';
import { autoSteps, type AutoStep, type StagePlace } from '#core/programme/nextStep';
import {
  thresholdFacts,
  thresholdIds,
  usualThresholds,
  type ProposalThresholds,
  type ThresholdFact,
  type ThresholdId,
} from '#core/programme/proposalThresholds';
import { sessionEvents, swellingRules, swellings, type StageCourse } from '#core/programme/stageCourse';
import { readShaped } from './readShaped';

const score = z.number().min(0).max(10);
const share = z.number().min(0).max(1);
const repetitions = z.int().min(1).max(1000);

/** A stage of a practice's own. */
const stageSchema = z
  .strictObject({
    id: z.string().min(1),
    words: z.string().min(1),
    start: repetitions,
    upTo: z.strictObject({ min: repetitions, max: repetitions }),
  })
  .refine(({ start, upTo: { min, max } }) => start <= min && min <= max, {
    path: ['upTo'],
    error: 'start is at most min, and min at most max',
  });

const sessionSchema = z.strictObject({
  day: z.int(),
  painBefore: score,
  painDuring: score,
  worstNextDay: score.nullable(),
  swelling: z.enum(swellings),
  event: z.enum(sessionEvents).nullable(),
  doneShare: share,
  measuredShare: share,
  expectedShare: share,
  lowerTenthShare: share,
  driftInward: z.boolean(),
  effort: score,
  repetitions,
});

const courseSchema = z.strictObject({
  limit: score,
  usualPain: score,
  swellingRule: z.enum(swellingRules),
  upTo: z
    .strictObject({ min: repetitions, max: repetitions })
    .refine(({ min, max }) => min <= max, { path: ['max'], error: 'max is at least min' }),
  sessions: z.array(sessionSchema).check(({ value, issues }) => {
    const at = value.findIndex(({ day }, i) => i > 0 && day < value[i - 1]!.day);
    if (at < 0) return;
    const message = `day ${value[at]!.day} comes after day ${value[at - 1]!.day}; the oldest session is the first`;
    issues.push({ code: 'custom', path: [at, 'day'], message, input: value[at]!.day });
  }),
  thresholds: z
    .strictObject(
      mapThresholds(({ min, max, isWhole }) => (isWhole ? z.int() : z.number()).min(min).max(max).optional()),
    )
    .optional(),
  stage: z
    .strictObject({
      exercise: z.enum(exerciseIds),
      id: z.string(),
      stages: z.array(stageSchema).min(1).optional(),
    })
    .check(({ value, issues }) => {
      const ids = (value.stages ?? findExercise(value.exercise).stages).map(({ id }) => id);
      if (ids.includes(value.id)) return;
      const message = `the stages are ${ids.join(', ')}`;
      issues.push({ code: 'custom', path: ['id'], message, input: value.id });
    })
    .optional(),
  autoStep: z.enum(autoSteps).default('propose'),
});

function mapThresholds<Schema>(schemaOf: (fact: ThresholdFact) => Schema) {
  return Object.fromEntries(thresholdIds.map((id) => [id, schemaOf(thresholdFacts[id])])) as Record<
    ThresholdId,
    Schema
  >;
}

export interface ReadCourse {
  course: StageCourse;
  thresholds: ProposalThresholds;
  /** Null where the file names no stage. */
  place: StagePlace | null;
  autoStep: AutoStep;
}

/**
 * What was agreed for an item and how its sessions went, oldest first; and if given, thresholds other than the usual
 * ones, the item's stage, and what the plan lets the patient's device do.
 *
 * @throws CommandProblem  where the file does not hold that, or holds anything else as well
 */
export function readCourse(path: string): ReadCourse {
  const { thresholds, stage, autoStep, ...course } = readShaped(
    path,
    courseSchema,
    'the sessions of an item',
  );
  const set = Object.entries(thresholds ?? {}).filter(([, value]) => value !== undefined);
  return {
    course,
    thresholds: { ...usualThresholds, ...Object.fromEntries(set) },
    place: stage === undefined ? null : placeOf(stage),
    autoStep,
  };
}

function placeOf({ exercise, id, stages }: NonNullable<z.infer<typeof courseSchema>['stage']>): StagePlace {
  return { exercise, stage: id, ...(stages === undefined ? {} : { stages }) };
}
