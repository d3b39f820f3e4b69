import type { Edition } from '#device/storage/records';
import type { Repository } from '#device/storage/repository';
import { StorageProblem } from '#device/storage/storageProblem';
import { readRecordingHead } from '#documents/recording/readRecordingHead';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead, type RecordingHead } from '#documents/recording/recordingHead';
import { reviewOnto } from '#documents/recording/reviewOnto';
import { emptyReview } from '#documents/recording/reviewSchema';

/** A recording as it was opened for review. */
export interface OpenedRecording {
  recording: RecordingHead;
  edition: Edition;
}

/**
 * Saves the reviews of one opened recording, one after another. One whose joints were replaced in the meantime
 * keeps the newer ones, measured with the review's settings.
 *
 * @returns  saves; rejects with StorageProblem 'changed' where somebody reviewed it elsewhere in the meantime
 */
export function createReviewSaver(
  { recordings }: Pick<Repository, 'recordings'>,
  opened: OpenedRecording,
): (reviewed: RecordingHead) => Promise<void> {
  let last = opened;
  /** With the joints that replaced those that were opened; null while these are still kept. */
  let newer: RecordingDocument | null = null;

  const write = async (reviewed: RecordingHead) => {
    const recording = newer === null ? reviewed : recordingHead(reviewOnto(newer, reviewed));
    last = { recording, edition: await recordings.update(recording, last.edition) };
  };
  return async (reviewed) => {
    try {
      await write(reviewed);
    } catch (error) {
      if (!(error instanceof StorageProblem && error.reason === 'changed')) throw error;
      const now = await recordings.find(reviewed.id);
      if (now === null || !isSameWork(now.recording, last.recording)) throw error;
      newer = now.recording;
      last = now;
      await write(reviewed);
    }
  };
}

function isSameWork(one: RecordingHead, other: RecordingHead): boolean {
  const workOf = (recording: RecordingHead) => {
    const { limits, corrections = [], review = emptyReview } = readRecordingHead(recordingHead(recording));
    return JSON.stringify([limits, corrections, review]);
  };
  return workOf(one) === workOf(other);
}
