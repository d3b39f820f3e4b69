import { Problem } from '#core/problem';
import type { Repository } from '#device/storage/repository';
import type { Parcel } from './parcel';
import { saveRecordingDocument } from './saveRecordingDocument';

/** How a parcel compares with what is kept: absent, identical, or another version of the same session. */
export type Standing = 'new' | 'known' | 'another-version';

/** @throws Problem  where it would replace what is kept of another session or another patient */
export async function standingOf(
  { session, sets }: Parcel,
  { sessions, recordings, videos }: Repository,
): Promise<Standing> {
  const kept = await sessions.find(session.id);
  if (kept !== null && kept.patient !== session.patient) throw notTheirs(kept.patient);
  let isKnown = kept !== null && JSON.stringify(kept) === JSON.stringify(session);
  for (const { recording, video } of sets) {
    const found = await recordings.find(recording.id);
    if (found !== null && found.facts.visitId !== session.id) {
      const other = found.facts.visitId === null ? null : await sessions.find(found.facts.visitId);
      throw notTheirs(other?.patient ?? '');
    }
    isKnown &&= found !== null && JSON.stringify(found.recording) === JSON.stringify(recording);
    const name = found?.facts.video ?? null;
    const keptVideo = name === null ? null : await videos.read(name);
    // Another part of the video, or all of it, may be sent later.
    isKnown &&= video === null || keptVideo?.size === video.size;
  }
  return isKnown ? 'known' : kept === null ? 'new' : 'another-version';
}

function notTheirs(patient: string): Problem {
  const whose = patient === '' ? 'another session' : `a session of ${patient}`;
  return new Problem(
    'file',
    `Part of it has the same id as ${whose} kept here. Nothing was changed; ask the sender about it.`,
  );
}

/** Saves a checked parcel, replacing an earlier version of the same session. */
export async function saveParcel({ session, sets }: Parcel, repository: Repository): Promise<void> {
  await repository.sessions.remove(session.id);
  for (const { recording, video } of sets)
    await saveRecordingDocument(repository, recording, {
      video,
      sessionId: session.id,
      session,
      fromVideo: video === null ? 'impossible' : 'done',
    });
  await repository.sessions.save(session);
}
