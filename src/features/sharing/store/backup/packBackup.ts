import type { Listed, Repository } from '#device/storage/repository';
import { backupVersion, type BackupFile, type BackupManifest } from '#documents/backup/backupManifest';
import { hashOf, packPart } from '../packedPart';

/** What is in a backup, for display. */
export interface BackupContents {
  patients: number;
  sessions: number;
  recordings: number;
  plans: number;
  videos: number;
}

/** What was put into a backup, and how many records were left out since they can't be read. */
export interface SavedContents extends BackupContents {
  unreadable: number;
}

/** The note of when a backup was last saved from this device; of this device alone, so it is in no backup. */
export const lastBackupName = 'last-backup';

export const noContents: BackupContents = { patients: 0, sessions: 0, recordings: 0, plans: 0, videos: 0 };

/**
 * Puts everything that is kept into one file: a line of JSON that says what follows, then the parts. What
 * can't be read is left out and counted; interrupted sets are not in it.
 *
 * @param onProgress  called with the number of recordings packed; throws to cancel
 * @returns  not sealed yet
 */
export async function packBackup(
  repository: Repository,
  createdAt: string,
  onProgress: (done: number, total: number) => void,
): Promise<{ blob: Blob; contents: SavedContents }> {
  const { patients, sessions, recordings, plans, notes, videos } = repository;
  const files: BackupFile[] = [];
  const parts: Blob[] = [];
  const contents = { ...noContents, unreadable: 0 };
  const add = (kind: 'patient' | 'visit' | 'plan' | 'note', document: unknown) => {
    const { part, facts } = packPart(document);
    files.push({ kind, ...facts });
    parts.push(new Blob([part]));
  };
  /** What can be read of a table. */
  const readable = <Value>({ found, unreadable }: Listed<Value>): Value[] => {
    contents.unreadable += unreadable.length;
    return found;
  };
  for (const patient of readable(await patients.list())) {
    add('patient', patient);
    contents.patients++;
  }
  for (const session of readable(await sessions.list())) {
    add('visit', session);
    contents.sessions++;
  }
  for (const plan of readable(await plans.list())) {
    add('plan', plan);
    contents.plans++;
  }
  for (const [name, text] of await notes.read())
    if (text !== '' && name !== lastBackupName) add('note', { name, text });
  const listed = readable(await recordings.list());
  for (const [index, { id, visitId: sessionId, fromVideo, video: videoName }] of listed.entries()) {
    onProgress(index, listed.length);
    const recording = (await recordings.find(id).catch(() => null))?.recording ?? null;
    if (recording === null) {
      contents.unreadable++;
      continue;
    }
    const { part, facts } = packPart(recording);
    files.push({ kind: 'session', sessionId: id, visitId: sessionId, fromVideo, ...facts });
    parts.push(new Blob([part]));
    contents.recordings++;
    const video = videoName === null ? null : await videos.read(videoName).catch(() => null);
    if (video === null) continue;
    const type = video.type === 'video/mp4' ? 'video/mp4' : 'video/webm';
    files.push({ kind: 'video', sessionId: id, type, bytes: video.size, sha256: await hashOf(video) });
    parts.push(video);
    contents.videos++;
  }
  onProgress(listed.length, listed.length);
  const manifest: BackupManifest = { format: 'overfoot-backup', version: backupVersion, createdAt, files };
  return { blob: new Blob([`${JSON.stringify(manifest)}\n`, ...parts]), contents };
}
