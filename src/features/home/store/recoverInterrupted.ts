import { buildKeypointTrack } from '#core/keypoints/keypointTrack';
import { isProblem } from '#core/problem';
import type { OpenFrameSource } from '#device/frames/frameSource';
import type { SetStart } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { StorageProblem } from '#device/storage/storageProblem';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { buildSetRecording } from '#shell/tracking/buildSetRecording';
import { loadVideoFacts } from '#shell/tracking/loadVideoFacts';
import { message } from '#words/messages/message';
import { unwanted } from '../guide/unwanted';

/**
 * Turns an interrupted set into a recording, from the joints and the video that reached storage, and adds it
 * to its session. Where its video can be read, it waits to be measured again from it.
 *
 * @throws StorageProblem  where nothing of it was stored, or it can't be saved
 */
export async function recoverInterrupted(
  id: string,
  { repository, openFrameSource }: { repository: Repository; openFrameSource: OpenFrameSource },
): Promise<RecordingDocument> {
  const { start, rows, video } = await repository.readInterrupted(id);
  const facts = video === null ? null : await loadVideoFacts(video, openFrameSource);
  if (facts === null && rows.length === 0) {
    throw new StorageProblem('missing', message('trouble.nothing-saved'));
  }
  const track = buildKeypointTrack(start.widthPx, start.heightPx, rows);
  const recording = buildSetRecording(start, track, facts);
  const session = await sessionWith(start, repository);
  await repository.keepInterrupted(recording, facts === null ? 'impossible' : 'waiting', session);
  return recording;
}

/** The set's session with the set in it; null where it has none, or none that can be read. */
async function sessionWith(start: SetStart, repository: Repository): Promise<SessionDocument | null> {
  const { id, visitId: sessionId, visitSet: sessionSet } = start;
  if (sessionId === null || sessionSet === null) return null;
  try {
    const session = await repository.sessions.find(sessionId);
    if (session === null) return null;
    const line = { ...sessionSet, sessionId: id, cutShort: sessionSet.cutShort ?? unwanted.interrupted };
    return {
      ...session,
      sets: [...session.sets.filter(({ sessionId: recordingId }) => recordingId !== id), line],
    };
  } catch (error) {
    if (isProblem(error, 'session')) return null;
    throw error;
  }
}
