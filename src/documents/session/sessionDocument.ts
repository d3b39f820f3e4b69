import { exerciseIds } from '#core/exercises/exercises';
import { swellings } from '#core/programme/stageCourse';
import { sides } from '#core/protocol/side';
import { signIds } from '#core/safety/signs';
import { z } from '../schema/zod';
import { conditionsSchema } from './conditionsSchema';

/** Bumped when a field is added, removed or changes its meaning; older versions are migrated on reading. */
export const sessionVersion = 4;

/** Longest texts, characters; the forms enforce the same. */
export const longestText = { patient: 60, remark: 2000, cutShort: 300, who: 60 };

/** All holds of one set together, ms: four hours, more than the longest plan needs. */
const longestHeldMs = 4 * 3_600_000;
/** More than the longest plan has. */
const mostSets = 1000;
const mostItems = 100;
/** More than anybody answers in one session. */
const mostAnswers = 100;

/** 0 to 10 in whole steps, as it is asked. */
const score = z.int().min(0).max(10);

/** One set of a session. */
export const sessionSetSchema = z.strictObject({
  sessionId: z
    .uuid()
    .nullable()
    .describe('The recording document of the set; null where nothing was measured.'),
  item: z.int().min(0).max(mostItems).describe('Index in the plan; 0 in a free recording.'),
  task: z.enum(exerciseIds),
  side: z.enum(sides).describe("The person's own side."),
  number: z.int().min(1).max(mostSets).describe('Which set of this item and side, from 1.'),
  prescribedRepetitions: z.int().min(1).max(1000).nullable(),
  painDuring: score.nullable(),
  cutShort: z
    .string()
    .min(1)
    .max(longestText.cutShort)
    .nullable()
    .describe('Why the set ended before its time; null where it did not.'),
  heldMs: z.number().min(0).max(longestHeldMs).nullable().describe('Total time held; null for a task.'),
  conditions: conditionsSchema
    .nullable()
    .describe('Under what it was done; null where no plan says so, and before version 4.'),
});

/** Why a session did not begin, or was stopped. */
export const endReasons = ['sign', 'pain', 'gave-way', 'locked', 'dizzy', 'other', 'not-told'] as const;
export type EndReason = (typeof endReasons)[number];

/** Why a plan was not followed for days, as the person says. */
export const silenceReasons = ['hurts', 'no-time', 'away', 'trouble', 'unfilmed'] as const;
export type SilenceReason = (typeof silenceReasons)[number];

const bothKnees = z.strictObject({ left: score.nullable(), right: score.nullable() });

/** What was asked about warning signs before anything was done, and answered. */
const checkSchema = z.strictObject({
  asked: z
    .enum(['all', 'new'])
    .describe('The whole list of signs, as the first time; or what is new since the last session.'),
  signs: z
    .array(z.enum(signIds))
    .max(signIds.length)
    .describe('Those that were said to apply; none: none of these.'),
  takenBack: z
    .array(z.enum(signIds))
    .max(signIds.length)
    .describe('Those that were chosen, and then said to be a mistake.'),
});

/** How the knee was after an earlier session. */
const afterwardsSchema = z.strictObject({
  visitId: z.uuid().describe('The session that it came after.'),
  worst: score.nullable().describe('Most pain in the day after it; null where that was not answered.'),
  swelling: z.enum(swellings).nullable().describe('Against the time before; null where it was not answered.'),
});

/** Pain above the limit with which the person went on, since the plan allows it and they said so. */
const wentOnSchema = z.strictObject({
  when: z.enum(['before', 'during']),
  score,
  limit: score,
  at: z.iso.datetime(),
});

/** Somebody's word that what was said in a session is settled. */
const settlementSchema = z.strictObject({
  visitId: z.uuid().describe('The session in which it was said; this one, or an earlier one.'),
  by: z
    .enum(['professional', 'therapist'])
    .describe('As the patient says of a professional, or as the therapist signed.'),
  who: z.string().min(1).max(longestText.who).describe('Who that was: in words, or initials.'),
  at: z.iso.datetime(),
});

/** One home session: its sets in order, with how it felt. */
export const sessionSchema = z
  .strictObject({
    format: z.literal('overfoot-visit'),
    version: z.literal(sessionVersion),
    id: z.uuid(),
    startedAt: z.iso.datetime(),
    endedAt: z.iso.datetime().nullable().describe('Null while it continues, or if it was broken off.'),
    patient: z.string().max(longestText.patient).describe('A pseudonym; empty for a free recording.'),
    planId: z.uuid().nullable().describe('The plan that it followed; null without one.'),
    painLimit: score
      .nullable()
      .describe('Pain above this was too much, by the plan and the usual pain; null before version 2.'),
    painBefore: score.nullable().describe('Of the knee that hurt more, where both were asked.'),
    painAfter: score.nullable().describe('The same, after all sets.'),
    painBySide: z
      .strictObject({ before: bothKnees, after: bothKnees })
      .nullable()
      .describe('Each knee by itself, where both legs work; null where one was asked.'),
    check: checkSchema.nullable().describe('Null where it was not answered, and before version 2.'),
    afterLast: afterwardsSchema
      .nullable()
      .describe('Answered before anything was done; null where there was no earlier session to ask about.'),
    wentOnAbove: z.array(wentOnSchema).max(mostAnswers),
    endedBecause: z
      .strictObject({
        reason: z.enum(endReasons),
        fell: z.boolean().nullable().describe('Whether they fell; null where that was not answered.'),
      })
      .nullable()
      .describe('Null where it was not stopped for a reason of the body.'),
    settles: z.array(settlementSchema).max(mostAnswers),
    isUnfilmed: z
      .boolean()
      .describe('Whether the person did all of it without filming, as they say; so no set has a recording.'),
    silence: z
      .strictObject({
        reason: z.enum(silenceReasons),
        since: z.iso
          .datetime()
          .describe('When the plan was last followed; where it never was, when it was accepted.'),
      })
      .nullable()
      .describe('Why nothing was done for days, in a record of nothing else; otherwise null.'),
    effort: score.nullable(),
    remark: z.string().max(longestText.remark),
    sets: z.array(sessionSetSchema).max(mostSets),
  })
  .meta({ title: 'Overfoot session document' });

export type SessionDocument = z.infer<typeof sessionSchema>;
export type SessionCheck = z.infer<typeof checkSchema>;
export type Afterwards = z.infer<typeof afterwardsSchema>;
export type WentOn = z.infer<typeof wentOnSchema>;
export type Silence = NonNullable<SessionDocument['silence']>;
export type Settlement = z.infer<typeof settlementSchema>;
export type SessionSet = z.infer<typeof sessionSetSchema>;
