import { emptyReview, type LimitsSet } from './reviewSchema';
import type { RecordingHead } from './recordingHead';

/**
 * A session as it is judged with limits that were set in another session of the same patient, task and side. One whose
 * limits were set already, or that somebody marked as reviewed, stays the same document: no verdict changes unasked.
 *
 * @param taken  null where there are none
 */
export function withTakenLimits<Recording extends RecordingHead>(
  recording: Recording,
  taken: LimitsSet | null,
): Recording {
  const { review = emptyReview } = recording;
  if (taken === null || review.reviewed !== null || review.limitsSet.length > 0) return recording;
  return { ...recording, limits: taken.limits, review: { ...review, limitsSet: [taken] } };
}
