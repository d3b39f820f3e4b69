import { buildRecording } from '#documents/recording/buildRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { RecordingReview } from '#documents/recording/reviewSchema';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { correctionsOf } from './reviewEdits';
import type { ReviewState } from './reviewState';

/** The reviewed recording as a document of its own, with the limits in force and what the review added. */
export function exportRecording(
  { note, videoFacts, model, observed, measurement, setup, excluded }: ShownRecording,
  { limits, edits, entries }: Pick<ReviewState, 'limits' | 'edits' | 'entries'>,
  id: string,
  createdAt: Date,
): RecordingDocument {
  return buildRecording({
    id,
    createdAt,
    note,
    limits,
    video: videoFacts,
    model,
    track: observed,
    measurement,
    corrections: correctionsOf(edits),
    setup,
    excluded,
    review: isBlank(entries) ? undefined : entries,
  });
}

function isBlank({ limitsSet, remarks, cues, reviewed }: RecordingReview): boolean {
  return limitsSet.length + remarks.length + cues.length === 0 && reviewed === null;
}
