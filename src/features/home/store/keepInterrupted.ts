import type { OpenFrameSource } from '#device/frames/frameSource';
import { buildKeypointTrack } from '#core/keypoints/keypointTrack';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { isProblem } from '#core/problem';
import type { SessionDocument } from '#documents/session/sessionDocument';
import type { SetStart } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { StorageProblem } from '#device/storage/storageProblem';
import { loadVideoFacts } from '#shell/tracking/loadVideoFacts';
import { buildSetRecording } from '#shell/tracking/buildSetRecording';

/** Stands in the visit as the reason why the set ended early, where none was given. */
export const interruptedReason =
  'The recording was interrupted: the page was closed, or the device went off.';

/**
 * Turns an interrupted set into a session, from the joints and the video that reached storage, and adds it to its
 * visit. Where its video can be read, it waits to be measured again from it.
 *
 * @throws StorageProblem  where nothing of it is there that could be kept, or it can't be saved
 */
export async function keepInterrupted(
  id: string,
  { repository, openFrameSource }: { repository: Repository; openFrameSource: OpenFrameSource },
): Promise<RecordingDocument> {
  const { start, rows, video } = await repository.readInterrupted(id);
  const facts = video === null ? null : await loadVideoFacts(video, openFrameSource);
  if (facts === null && rows.length === 0) {
    throw new StorageProblem(
      'missing',
      'This set was interrupted before anything of it could be kept. Drop it, and do the set once more if you can.',
    );
  }
  const track = buildKeypointTrack(start.widthPx, start.heightPx, rows);
  const recording = buildSetRecording(start, track, facts);
  const session = await sessionWith(start, repository);
  await repository.keepInterrupted(recording, facts === null ? 'impossible' : 'waiting', session);
  return recording;
}

/** The set's visit with the set in it; null where it has none, or none that can be read. */
async function sessionWith(start: SetStart, repository: Repository): Promise<SessionDocument | null> {
  const { id, visitId: sessionId, visitSet: sessionSet } = start;
  if (sessionId === null || sessionSet === null) return null;
  try {
    const session = await repository.sessions.find(sessionId);
    if (session === null) return null;
    const line = { ...sessionSet, sessionId: id, cutShort: sessionSet.cutShort ?? interruptedReason };
    return {
      ...session,
      sets: [...session.sets.filter(({ sessionId: recordingId }) => recordingId !== id), line],
    };
  } catch (error) {
    if (isProblem(error, 'session')) return null;
    throw error;
  }
}
