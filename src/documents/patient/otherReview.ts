import { taskIds } from '#core/exercises/exercises';
import { sides } from '#core/protocol/side';
import { canonicalText } from '../reading/canonicalText';
import { correctionSchema, mostCorrections } from '../recording/correctionSchema';
import type { RecordingHead } from '../recording/recordingHead';
import { emptyReview, reviewSchema } from '../recording/reviewSchema';
import { z } from '../schema/zod';
import { longestDocument, type OtherVersion } from './otherVersion';

/** What of a recording's review can't be put together with that of another version, and of which set it is. */
const otherReviewSchema = z.strictObject({
  createdAt: z.iso.datetime(),
  task: z.enum(taskIds),
  side: z.enum(sides),
  corrections: z.array(correctionSchema).max(mostCorrections),
  cues: reviewSchema.shape.cues,
});
export type OtherReview = z.infer<typeof otherReviewSchema>;
/** The same of the version that counts. */
export type CountingReview = Pick<OtherReview, 'corrections' | 'cues'>;

/**
 * As what the corrections and cues of a version that does not count are kept in the patient's record.
 *
 * @returns  null where the one that counts has all of them, and for a text that no review comes to by hand: it would not
 * fit in the record
 */
export function reviewBeside(
  other: RecordingHead,
  counts: RecordingHead,
): Pick<OtherVersion, 'kind' | 'of' | 'text'> | null {
  const [mine, counting] = [reviewOf(other), reviewOf(counts)];
  const isThere = [notIn(mine.corrections, counting.corrections), notIn(mine.cues, counting.cues)].every(
    ({ length }) => length === 0,
  );
  if (isThere) return null;
  const { createdAt, setup } = other;
  const review: OtherReview = { createdAt, task: setup.task, side: setup.side, ...mine };
  const text = canonicalText(review);
  return text.length > longestDocument ? null : { kind: 'review', of: other.id, text };
}

export function reviewOf({ corrections = [], review = emptyReview }: RecordingHead): CountingReview {
  return { corrections, cues: review.cues };
}

/** Null for what can't be read. */
export function readOtherReview(text: string): OtherReview | null {
  try {
    return otherReviewSchema.parse(JSON.parse(text));
  } catch {
    return null;
  }
}

/** Of some entries those that are not among others. */
export function notIn<Entry>(entries: readonly Entry[], others: readonly Entry[]): Entry[] {
  const known = new Set(others.map(canonicalText));
  return entries.filter((entry) => !known.has(canonicalText(entry)));
}
