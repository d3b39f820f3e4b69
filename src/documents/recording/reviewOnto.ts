import { measureCorrected } from '#core/correction/measureCorrected';
import { deriveRecording } from './buildRecording';
import type { RecordingDocument } from './recordingDocument';
import type { RecordingHead } from './recordingHead';
import { recordingTrack } from './recordingTrack';

/** A recording with newer joints, and what a review of the older ones set: measured and judged accordingly. */
export function reviewOnto(newer: RecordingDocument, reviewed: RecordingHead): RecordingDocument {
  const { limits, setup, review, corrections = [] } = reviewed;
  const { measurement, excluded } = measureCorrected(recordingTrack(newer), setup, corrections);
  return {
    ...newer,
    limits,
    setup,
    ...(corrections.length > 0 ? { corrections } : {}),
    ...(review === undefined ? {} : { review }),
    derived: deriveRecording(measurement, limits, excluded),
  };
}
