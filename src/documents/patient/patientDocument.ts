import { assessmentIds } from '#core/assessments/assessments';
import { exerciseIds } from '#core/exercises/exercises';
import { proposalKinds } from '#core/programme/proposal';
import { thresholdIds } from '#core/programme/proposalThresholds';
import { sides } from '#core/protocol/side';
import { planBounds, planRanges } from '../plan/planRanges';
import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';
import {
  criterionSchema,
  onsets,
  overrideSchema,
  ownEyeSchema,
  pauseSchema,
  questionnaireSchema,
  redFlagsSchema,
  restrictionSchema,
  surgerySchema,
} from './caseEntries';
import { logEntrySchema } from './logEntry';
import { mostOtherVersions, otherVersionSchema } from './otherVersion';
import { keptEntry, signed } from './signedEntry';

/** Bumped when a field is added, removed or changes its meaning; older versions are migrated on reading. */
export const patientVersion = 6;

/** Longest texts, characters; the forms enforce the same. */
export const longestPatientText = {
  pseudonym: longestText.patient,
  goals: 1000,
  restrictions: 1000,
  /** Who signs: initials. */
  by: longestText.who,
  /** Why a proposal is refused: a line. */
  why: 200,
  /** What a test's protocol fixes, as it was done. */
  asDone: 300,
  remark: 500,
};

const mostPlans = 1000;
const mostMarks = 10_000;
const mostEntries = 5000;
const mostReasons = 40;
const longestReason = 500;
const mostTries = 20;
/** No result is larger, in any unit. */
const largestResult = 10_000;

/** What a therapist made of a proposal; never changed afterwards. */
const decisionSchema = z.strictObject({
  id: z.uuid(),
  ...signed,
  planId: z.uuid(),
  item: z.int().min(0).max(1000).describe('Index in the plan.'),
  task: z.enum(exerciseIds),
  proposal: z.enum(proposalKinds),
  repetitions: z.int().min(1).max(1000).nullable().describe('Of a set, where more are proposed.'),
  reasons: z
    .array(z.string().min(1).max(longestReason))
    .max(mostReasons)
    .describe('What it rested on, as it was shown.'),
  answer: z.enum(['accepted', 'refused']),
  why: z.string().max(longestPatientText.why).describe('Of a refusal; empty where it was accepted.'),
});

const tries = z.array(z.number().min(0).max(largestResult)).max(mostTries);

/** A test of function, as the therapist wrote it down. */
const assessmentSchema = z.strictObject({
  ...keptEntry,
  test: z.enum(assessmentIds),
  asDone: z
    .string()
    .max(longestPatientText.asDone)
    .describe('What the protocol fixes, as it was done: only tests with the same are compared.'),
  tries: z
    .strictObject({ left: tries, right: tries })
    .describe("In the test's unit, in order; none: not done."),
  worstPain: z.int().min(0).max(10).nullable().describe('During the test; null: not asked.'),
  remark: z.string().max(longestPatientText.remark),
});

/** A set that was filmed again, after the person walked away and the camera was set up again. */
const repeatSchema = z.strictObject({
  ...signed,
  first: z.uuid().describe('The recording of the first time.'),
  second: z.uuid(),
});

/** Where it hurts, as the patient points to it. */
export const painSites = ['front', 'outer', 'inner', 'behind', 'elsewhere'] as const;
export type PainSite = (typeof painSites)[number];

export const painfulSides = [...sides, 'both'] as const;
export type PainfulSide = (typeof painfulSides)[number];

/** How far somebody got with a session: it was opened, or nothing in it is left to do. */
export const markStates = ['viewed', 'settled'] as const;

/** What somebody notes of a patient. */
const noted = {
  painfulSide: z.enum(painfulSides).nullable().describe('Null: not noted.'),
  since: z.iso.date().nullable().describe('Since when it hurts; null: not noted.'),
  onset: z.enum(onsets).nullable().describe('How it began; null: not noted.'),
  sites: z.array(z.enum(painSites)).max(painSites.length),
  goals: z.string().max(longestPatientText.goals),
  painRule: z
    .strictObject({
      limit: z.int().min(planRanges.painLimit.min).max(planRanges.painLimit.max),
      then: z.string().max(planBounds.beyondPainLimit).describe('What was agreed to do above it.'),
    })
    .nullable()
    .describe('What was agreed about pain, 0 to 10; null: not noted.'),
  restrictions: z
    .string()
    .max(longestPatientText.restrictions)
    .describe('In words; a plan is only held against `prescribedRestrictions`.'),
  surgery: surgerySchema.nullable().describe('The latest of the knee; null: none is noted.'),
};

/** Notes that somebody else made meanwhile on another device, and that do not count; nothing but what differed. */
const alsoNotedSchema = z.strictObject({ ...signed, notes: z.strictObject(noted).partial() });

export const handOverKinds = ['given', 'taken'] as const;

/** That a record was handed over to a colleague, or taken over from one; never changed afterwards. */
const handOverSchema = z.strictObject({
  id: z.uuid(),
  ...signed,
  kind: z.enum(handOverKinds),
  colleague: z.string().min(1).max(longestText.who).describe('Initials.'),
  key: z
    .string()
    .min(1)
    .max(100)
    .describe('Given: the public key it was sealed for. Taken: the public key that signed it.'),
});

/** What a practice keeps of a patient beside the sessions. It stays with the practice. */
export const patientSchema = z
  .strictObject({
    format: z.literal('overfoot-patient'),
    version: z.literal(patientVersion),
    id: z.uuid(),
    note: z.string().max(2000).describe('For demo data: that it is invented. Otherwise empty.'),
    pseudonym: z.string().min(1).max(longestPatientText.pseudonym).describe('Never a name.'),
    openedAt: z.iso.datetime().describe('When the record was made.'),
    changedAt: z.iso.datetime().describe('When somebody last changed what is noted below, up to `plans`.'),
    ...noted,
    plans: z
      .array(z.strictObject({ id: z.uuid(), givenAt: z.iso.datetime() }))
      .max(mostPlans)
      .describe('Plans that were given, the latest last.'),
    marks: z
      .array(z.strictObject({ visitId: z.uuid(), state: z.enum(markStates), at: z.iso.datetime() }))
      .max(mostMarks)
      .describe('Sessions that were looked at, one entry each; others are new.'),
    thresholds: z
      .partialRecord(z.enum(thresholdIds), z.number())
      .describe('Where the rules for what to do next draw their lines, where that is not as usual.'),
    decisions: z
      .array(decisionSchema)
      .max(mostEntries)
      .describe('On proposals, in the order in which they were made.'),
    assessments: z
      .array(assessmentSchema)
      .max(mostEntries)
      .describe('In the order in which they were written down.'),
    repeats: z.array(repeatSchema).max(mostEntries),
    pauses: z.array(pauseSchema).max(mostEntries).describe('Of the plan, as they were entered.'),
    redFlags: z.array(redFlagsSchema).max(mostEntries),
    prescribedRestrictions: z
      .array(restrictionSchema)
      .max(mostEntries)
      .describe('As a surgeon or doctor set them; a plan is held against them.'),
    overrides: z.array(overrideSchema).max(mostEntries),
    questionnaires: z.array(questionnaireSchema).max(mostEntries),
    ownEye: z.array(ownEyeSchema).max(mostEntries),
    criteria: z.array(criterionSchema).max(mostEntries),
    alsoNoted: z.array(alsoNotedSchema).max(mostEntries),
    handOvers: z.array(handOverSchema).max(mostEntries).describe('In order of time.'),
    log: z.array(logEntrySchema).max(mostEntries).describe('Who did what, in order of time.'),
    otherVersions: z
      .array(otherVersionSchema)
      .max(mostOtherVersions)
      .describe('Of sessions, plans and reviews that differed between two devices.'),
  })
  .meta({ title: 'Overfoot patient document' });

export type PatientDocument = z.infer<typeof patientSchema>;
export type SessionMark = PatientDocument['marks'][number];
export type Decision = z.infer<typeof decisionSchema>;
export type AssessmentRecord = z.infer<typeof assessmentSchema>;
export type AlsoNoted = z.infer<typeof alsoNotedSchema>;
export type HandOver = z.infer<typeof handOverSchema>;
export type RepeatRecord = z.infer<typeof repeatSchema>;
/** What somebody notes of a patient. */
export type PatientNotes = Pick<PatientDocument, keyof typeof noted>;

/** The names of what is noted. */
export const notedFields = Object.keys(noted) as (keyof PatientNotes)[];
