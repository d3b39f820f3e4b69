import { readRecording } from '#documents/recording/readRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead, type RecordingHead } from '#documents/recording/recordingHead';
import type { RecordingFacts } from './keptSchemas';
import type { RecordChange } from './records';
import { videoName } from './videos';

/** The changes that save a recording; the document is checked first, so that it can be read back. */
export function savingRecording(
  recording: RecordingDocument,
  { visitId: sessionId, video, fromVideo }: Pick<RecordingFacts, 'visitId' | 'video' | 'fromVideo'>,
): RecordChange[] {
  const checked = readRecording(recording);
  const { id, createdAt, setup } = checked;
  const { task, side } = setup;
  const facts: RecordingFacts = {
    id,
    createdAt,
    task,
    side,
    visitId: sessionId,
    video,
    fromVideo,
    limitsSet: lastLimits(checked),
  };
  return [
    { put: 'sessions', key: id, value: recordingHead(checked) },
    puttingJoints(checked),
    { put: 'facts', key: id, value: facts },
  ];
}

/** The limits that a recording's review set last; null where none did. */
export function lastLimits({ review }: RecordingHead): RecordingFacts['limitsSet'] {
  return review?.limitsSet.at(-1) ?? null;
}

/** The changes that delete a recording. */
export function removingRecording(id: string): RecordChange[] {
  return [
    { remove: 'sessions', key: id },
    { remove: 'rows', key: jointsKey(id) },
    { remove: 'facts', key: id },
    ...removingTracking(id),
  ];
}

/**
 * Key of a recording's joints. They are stored apart from what a review changes: they are megabytes, and a
 * review never changes them.
 */
export function jointsKey(id: string): string {
  return `session:${id}/joints`;
}

export function puttingJoints({ id, observed }: Pick<RecordingDocument, 'id' | 'observed'>): RecordChange {
  return { put: 'rows', key: jointsKey(id), value: observed };
}

/** The changes that delete the rows tracked so far from a recording's video. */
export function removingTracking(id: string): RecordChange[] {
  return [
    { remove: 'tracking', key: id },
    { remove: 'rows', key: `${trackingOwner(id)}/`, andBelow: true },
  ];
}

/** Owner of the rows tracked from a recording's video. */
export function trackingOwner(id: string): string {
  return `video:${id}`;
}

/** Names that the video of a set or recording can have. */
export function videoNamesOf(id: string): string[] {
  return [videoName(id, 'video/webm'), videoName(id, 'video/mp4')];
}
