import { limitsSchema } from '../schema/limitsSchema';
import { z } from '../schema/zod';
import { longestName } from './correctionSchema';

/** Longest texts, characters; the forms enforce the same. */
export const longestReviewText = { remark: 2000, cue: 120 };
export const mostLimitsSet = 500;
export const mostRemarks = 1000;

const signed = {
  by: z.string().max(longestName).describe('Initials or a role; empty where none was given.'),
  at: z.iso.datetime(),
};
const atMs = z
  .number()
  .min(0)
  .max(24 * 3_600_000)
  .describe('A time within the repetition that is meant.');

/** Limits as somebody set them. */
export const limitsSetSchema = z.strictObject({
  limits: limitsSchema,
  takenFrom: z.iso
    .datetime()
    .optional()
    .describe('When the recording was made in which they were set; left out if it was this one.'),
  forLater: z
    .literal(true)
    .optional()
    .describe(
      'They also hold for later recordings of the same patient, task and side; left out where they hold for this one alone.',
    ),
  ...signed,
});
export type LimitsSet = z.infer<typeof limitsSetSchema>;

/** What a therapist noted while reviewing a recording. */
export const reviewSchema = z.strictObject({
  limitsSet: z
    .array(limitsSetSchema)
    .max(mostLimitsSet)
    .describe('Limits as they were set, oldest first; the last one is in force.'),
  remarks: z
    .array(
      z.strictObject({
        atMs: atMs.nullable().describe('Null for a remark on the whole set.'),
        text: z.string().min(1).max(longestReviewText.remark),
        ...signed,
      }),
    )
    .max(mostRemarks),
  cues: z
    .array(z.strictObject({ atMs, text: z.string().min(1).max(longestReviewText.cue) }))
    .max(20)
    .describe('Repetitions to show to the patient, each with what is said.'),
  reviewed: z.strictObject(signed).nullable().describe('Null until somebody has reviewed it.'),
});
export type RecordingReview = z.infer<typeof reviewSchema>;

export const emptyReview: RecordingReview = { limitsSet: [], remarks: [], cues: [], reviewed: null };
