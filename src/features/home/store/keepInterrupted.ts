import type { OpenFrameSource } from '#device/frames/frameSource';
import { buildKeypointTrack } from '#core/keypoints/keypointTrack';
import type { SessionDocument } from '#documents/recording/sessionDocument';
import { SessionProblem } from '#documents/reading/sessionProblem';
import type { VisitDocument } from '#documents/session/visitDocument';
import type { SetStart } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { StorageProblem } from '#device/storage/storageProblem';
import { readVideoFacts } from '#shell/tracking/readVideoFacts';
import { setSession } from '#shell/tracking/setSession';

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
): Promise<SessionDocument> {
  const { start, rows, video } = await repository.readInterrupted(id);
  const facts = video === null ? null : await readVideoFacts(video, openFrameSource);
  if (facts === null && rows.length === 0) {
    throw new StorageProblem(
      'missing',
      'This set was interrupted before anything of it could be kept. Drop it, and do the set once more if you can.',
    );
  }
  const track = buildKeypointTrack(start.widthPx, start.heightPx, rows);
  const session = setSession(start, track, facts);
  const visit = await visitWith(start, repository);
  await repository.keepInterrupted(session, facts === null ? 'impossible' : 'waiting', visit);
  return session;
}

/** The set's visit with the set in it; null where it has none, or none that can be read. */
async function visitWith(start: SetStart, repository: Repository): Promise<VisitDocument | null> {
  const { id, visitId, visitSet } = start;
  if (visitId === null || visitSet === null) return null;
  try {
    const visit = await repository.visits.find(visitId);
    if (visit === null) return null;
    const line = { ...visitSet, sessionId: id, cutShort: visitSet.cutShort ?? interruptedReason };
    return { ...visit, sets: [...visit.sets.filter(({ sessionId }) => sessionId !== id), line] };
  } catch (error) {
    if (error instanceof SessionProblem) return null;
    throw error;
  }
}
