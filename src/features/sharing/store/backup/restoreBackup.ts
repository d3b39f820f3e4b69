import type { Repository } from '#device/storage/repository';
import { saveRecordingDocument } from '../saveRecordingDocument';
import type { BackupEntry, ReadableBackup } from './openBackup';
import { noContents, type BackupContents } from './packBackup';

/** How an entry compares with what is kept here: absent, the same, or another version. */
type Standing = 'new' | 'same' | 'different';

/** What is in a backup, and how it compares with what is kept here. */
export interface BackupReport {
  contents: BackupContents;
  missing: number;
  different: number;
}

/** Reads a whole backup without writing anything: after this it is known that all of it can be read. */
export async function checkBackup(
  backup: ReadableBackup,
  repository: Repository,
  onProgress: (done: number, total: number) => void,
): Promise<BackupReport> {
  const contents = { ...noContents };
  const report = { contents, missing: 0, different: 0 };
  let done = 0;
  for await (const entry of backup.entries()) {
    onProgress(done++, backup.total);
    if (entry.kind === 'visit') contents.sessions++;
    if (entry.kind === 'plan') contents.plans++;
    if (entry.kind === 'session') {
      contents.recordings++;
      if (entry.video !== null) contents.videos++;
    }
    if (entry.kind === 'note') continue;
    const standing = await standingOf(entry, repository);
    if (standing === 'new') report.missing++;
    if (standing === 'different') report.different++;
  }
  return report;
}

/**
 * Restores what is missing here; what is kept here and not in the backup stays.
 *
 * @param replaces  whether other versions kept here are replaced by the backup's
 */
export async function restoreBackup(
  backup: ReadableBackup,
  repository: Repository,
  replaces: boolean,
  onProgress: (done: number, total: number) => void,
): Promise<void> {
  let done = 0;
  for await (const entry of backup.entries()) {
    onProgress(done++, backup.total);
    if (entry.kind === 'note') await restoreNote(entry, repository);
    else {
      const standing = await standingOf(entry, repository);
      if (standing === 'new' || (standing === 'different' && replaces)) await restore(entry, repository);
    }
  }
}

async function restore(entry: Exclude<BackupEntry, { kind: 'note' }>, repository: Repository): Promise<void> {
  if (entry.kind === 'visit') await repository.sessions.save(entry.session);
  else if (entry.kind === 'plan') {
    const { id, text, savedAt } = entry.plan;
    await repository.plans.save(id, text, savedAt);
  } else {
    const { recording, file, video } = entry;
    const { visitId: sessionId, fromVideo } = file;
    await saveRecordingDocument(repository, recording, { sessionId, fromVideo, video, session: null });
  }
}

/** Keys are added to those that are here; a draft or a name only where there is none. */
async function restoreNote({ name, text }: { name: string; text: string }, { notes }: Repository) {
  const here = (await notes.read()).get(name);
  if (here === undefined) await notes.write(name, text);
  else if (name === 'keys') await notes.write(name, withKeys(here, text));
}

function withKeys(here: string, others: string): string {
  try {
    const kept = JSON.parse(here) as { recipient: string }[];
    const added = (JSON.parse(others) as { recipient: string }[]).filter(
      ({ recipient }) => !kept.some((one) => one.recipient === recipient),
    );
    return JSON.stringify([...kept, ...added]);
  } catch {
    return here;
  }
}

async function standingOf(
  entry: Exclude<BackupEntry, { kind: 'note' }>,
  { sessions, plans, recordings }: Repository,
): Promise<Standing> {
  const isSame = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);
  const standing = (here: unknown, there: unknown): Standing =>
    here === null ? 'new' : isSame(here, there) ? 'same' : 'different';
  // What is kept here and can't be read is another version, which the backup may replace.
  const unreadable = () => undefined;
  if (entry.kind === 'visit')
    return standing(await sessions.find(entry.session.id).catch(unreadable), entry.session);
  if (entry.kind === 'plan')
    return standing(await plans.find(entry.plan.id).catch(unreadable), entry.plan.text);
  const kept = await recordings.find(entry.recording.id).catch(unreadable);
  if (kept === undefined) return 'different';
  if (kept !== null && kept.facts.video === null && entry.video !== null) return 'different';
  return standing(kept?.recording ?? null, entry.recording);
}
