import { exerciseIds } from '#core/exercises/exercises';
import { sides } from '#core/protocol/side';
import { z } from '../schema/zod';

/** Bumped when a field is added, removed or changes its meaning; older versions are migrated on reading. */
export const sessionVersion = 1;

/** Longest texts, characters; the forms enforce the same. */
export const longestText = { patient: 60, remark: 2000, cutShort: 300 };

/** All holds of one set together, ms: four hours, more than the longest plan needs. */
const longestHeldMs = 4 * 3_600_000;
/** More than the longest plan has. */
const mostSets = 1000;
const mostItems = 100;

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
    painBefore: score.nullable(),
    painAfter: score.nullable(),
    effort: score.nullable(),
    remark: z.string().max(longestText.remark),
    sets: z.array(sessionSetSchema).max(mostSets),
  })
  .meta({ title: 'Overfoot session document' });

export type SessionDocument = z.infer<typeof sessionSchema>;
export type SessionSet = z.infer<typeof sessionSetSchema>;
