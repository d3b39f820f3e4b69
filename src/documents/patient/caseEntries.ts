import { handMeasureIds } from '#core/criteria/handRanges';
import { exerciseIds } from '#core/exercises/exercises';
import { sides } from '#core/protocol/side';
import { clinicianFlagIds } from '#core/safety/clinicianFlagIds';
import { planBounds, planRanges } from '../plan/planRanges';
import { z } from '../schema/zod';
import { keptEntry, signed } from './signedEntry';

/** Longest texts of the entries below, characters; the forms enforce the same. */
export const longestCaseText = {
  setBy: 60,
  why: 200,
  refusal: 500,
  url: 300,
  title: 200,
  question: 500,
  answer: 1000,
  code: 100,
};

/** Most entries of lists within an entry. */
export const mostInEntry = { questions: 200, answers: 20, repetitions: 1000 };

/** Days on which nothing is due, by the calendar, both included. */
export const pauseSchema = z.strictObject({
  ...keptEntry,
  from: z.iso.date(),
  to: z.iso.date().nullable().describe('Null: until further notice.'),
  changed: z.strictObject(signed).nullable().describe('Who last changed its end; null: as it was entered.'),
});

/** What was asked about warning signs at a visit; what is in neither list was not asked. */
export const redFlagsSchema = z.strictObject({
  ...keptEntry,
  on: z.iso.date().describe('Day of the visit.'),
  asked: z.array(z.enum(clinicianFlagIds)).max(clinicianFlagIds.length),
  applied: z.array(z.enum(clinicianFlagIds)).max(clinicianFlagIds.length).describe('Of those asked.'),
});

/** What a surgeon, or another doctor, has forbidden for a time. */
const prescribed = {
  ...keptEntry,
  side: z.enum(sides),
  setBy: z.string().min(1).max(longestCaseText.setBy).describe('Who set it, such as the surgeon. No name.'),
  until: z.iso.date().nullable().describe('The last day; null: until further notice.'),
};

export const bearings = ['none', 'partial'] as const;

export const restrictionSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    ...prescribed,
    kind: z.literal('bend'),
    mostDeg: z.number().min(0).max(planRanges.bendDeg.max).describe('From straight.'),
  }),
  z.strictObject({
    ...prescribed,
    kind: z.literal('weight-bearing'),
    bearing: z.enum(bearings),
  }),
  z
    .strictObject({ ...prescribed, kind: z.literal('open-chain') })
    .describe('The knee is not straightened against a load with the foot free.'),
  z.strictObject({ ...prescribed, kind: z.literal('load') }).describe('No band or weight.'),
]);

/** A plan's item beyond a restriction, which somebody answers for. */
export const overrideSchema = z.strictObject({
  id: z.uuid(),
  ...signed,
  restriction: z.uuid(),
  task: z.enum(exerciseIds),
  refusal: z.string().min(1).max(longestCaseText.refusal).describe('What was said, as it was shown.'),
  why: z.string().min(1).max(longestCaseText.why),
});

/** An answer as FHIR R4 has it, of the kinds that are shown. */
const answerSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('whole'), value: z.int() }),
  z.strictObject({ kind: z.literal('number'), value: z.number() }),
  z.strictObject({ kind: z.literal('text'), value: z.string().max(longestCaseText.answer) }),
  z.strictObject({ kind: z.literal('yes-no'), value: z.boolean() }),
  z.strictObject({ kind: z.literal('date'), value: z.iso.date() }),
  z.strictObject({
    kind: z.literal('choice'),
    system: z.string().max(longestCaseText.url).nullable(),
    code: z.string().min(1).max(longestCaseText.code),
    display: z.string().max(longestCaseText.question),
    points: z.number().nullable().describe('What its definition says that it counts; null: nothing.'),
  }),
]);

/** A questionnaire as it was answered. */
export const questionnaireSchema = z.strictObject({
  ...keptEntry,
  on: z.iso.date().describe('Day of the answers.'),
  of: z
    .string()
    .min(1)
    .max(longestCaseText.url)
    .describe("The definition's canonical url; of one that is built in, its id."),
  version: z.string().max(longestCaseText.code).nullable().describe("The definition's own; null: none."),
  title: z.string().min(1).max(longestCaseText.title),
  answers: z
    .array(
      z.strictObject({
        linkId: z.string().min(1).max(longestCaseText.code),
        question: z.string().max(longestCaseText.question).describe('As it was asked.'),
        answers: z.array(answerSchema).max(mostInEntry.answers).describe('None: not answered.'),
      }),
    )
    .min(1)
    .max(mostInEntry.questions),
  score: z.number().nullable().describe('By a published rule; null: no rule is known, or too few answers.'),
});

/** What somebody judged by eye of a recording, before seeing what was measured. */
export const ownEyeSchema = z.strictObject({
  ...signed,
  recordingId: z.uuid(),
  answers: z
    .array(
      z.strictObject({
        repetition: z.int().min(0).max(mostInEntry.repetitions).describe('Index in the recording.'),
        verdict: z.enum(['in', 'out']),
      }),
    )
    .min(1)
    .max(mostInEntry.repetitions),
});

/** What was measured elsewhere, for the card of criteria; the measure says the unit. */
export const criterionSchema = z.strictObject({
  ...keptEntry,
  on: z.iso.date().describe('When it was measured.'),
  measure: z.enum(handMeasureIds),
  value: z.number(),
});

export const onsets = ['sudden', 'gradual'] as const;
export type Onset = (typeof onsets)[number];

/** The operation that a plan has to respect. */
export const surgerySchema = z.strictObject({
  what: z.string().min(1).max(planBounds.freeName),
  side: z.enum(sides),
  on: z.iso.date(),
});

export type PauseRecord = z.infer<typeof pauseSchema>;
export type RedFlagsRecord = z.infer<typeof redFlagsSchema>;
export type Restriction = z.infer<typeof restrictionSchema>;
export type Override = z.infer<typeof overrideSchema>;
export type QuestionnaireRecord = z.infer<typeof questionnaireSchema>;
export type QuestionnaireAnswer = z.infer<typeof answerSchema>;
export type OwnEyeRecord = z.infer<typeof ownEyeSchema>;
export type CriterionRecord = z.infer<typeof criterionSchema>;
