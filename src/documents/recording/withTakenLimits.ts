import type { RecordingHead } from './recordingHead';
import { emptyReview, type LimitsSet } from './reviewSchema';

/**
 * A recording judged by limits that were set in another recording of the same patient, task and side. One
 * that has its own limits, or is marked as reviewed, is returned unchanged: no verdict changes without being
 * asked for.
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
