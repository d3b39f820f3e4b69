import { settleCorrections } from '#core/correction/settleCorrections';
import type { Side } from '#core/protocol/side';
import { readRecording } from '#documents/recording/readRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead, type RecordingHead } from '#documents/recording/recordingHead';
import type { RecordingFacts } from './keptSchemas';
import type { Edition, RecordChange } from './records';
import type { Videos } from './videos';

/**
 * The changes that save a recording; the document is checked first, so that it can be read back.
 *
 * @param expects  the edition that it replaces, null for none; any where left out
 */
export function savingRecording(
  recording: RecordingDocument,
  { visitId: sessionId, video, fromVideo }: Pick<RecordingFacts, 'visitId' | 'video' | 'fromVideo'>,
  expects?: Edition | null,
): RecordChange[] {
  const checked = readRecording(recording);
  const { id, createdAt, setup } = checked;
  const facts: RecordingFacts = {
    id,
    createdAt,
    task: setup.task,
    side: workingSide(checked),
    visitId: sessionId,
    video,
    fromVideo,
    limitsSet: lastLimits(checked),
  };
  return [
    {
      put: 'sessions',
      key: id,
      value: recordingHead(checked),
      ...(expects === undefined ? {} : { expects }),
    },
    puttingJoints(checked),
    { put: 'facts', key: id, value: facts },
  ];
}

/** The limits that a recording's review set last for later sets too; null where none did. */
export function lastLimits({ review }: RecordingHead): RecordingFacts['limitsSet'] {
  return review?.limitsSet.findLast(({ forLater }) => forLater === true) ?? null;
}

/** The leg that worked, as the review left it. */
export function workingSide({ setup, corrections = [] }: RecordingHead): Side {
  return settleCorrections(corrections, setup.side).side;
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

/** Whether a video is that of a set or recording, one that is written beside it included. */
export function isVideoOf(id: string, name: string): boolean {
  return name.startsWith(`${id}.`);
}

/** Deletes the videos of sets or recordings, those written beside them included. */
export async function removeVideosOf(videos: Videos, ids: readonly string[]): Promise<void> {
  for (const { name } of await videos.list())
    if (ids.some((id) => isVideoOf(id, name))) await videos.remove(name);
}
