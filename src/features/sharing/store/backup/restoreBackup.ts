import { isProblem } from '#core/problem';
import type { Edition } from '#device/storage/records';
import type { Repository } from '#device/storage/repository';
import { StorageProblem } from '#device/storage/storageProblem';
import { mergeLibraries } from '#documents/library/libraryChanges';
import { libraryKind } from '#documents/library/libraryKind';
import { mergePatients } from '#documents/patient/mergePatients';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { parseDocument } from '#documents/reading/readDocument';
import { isWorkedOn } from '#documents/recording/keptWork';
import type { BackupEntry, ReadableBackup } from './openBackup';
import { noContents, type BackupContents } from './packBackup';

/** How an entry compares with what is kept here: absent, the same, or another version. */
interface Standing {
  kind: 'new' | 'same' | 'different';
  /** Whether what is kept here was reviewed or corrected by hand. */
  isWorkedOn?: boolean;
  /** The edition of the recording that is kept here, null for none; left out where it can't be read. */
  edition?: Edition | null;
}

/** What is in a backup, and how it compares with what is kept here. */
export interface BackupReport {
  contents: BackupContents;
  missing: number;
  different: number;
  /** Of the different ones, recordings that were reviewed or corrected here. */
  workedOn: number;
}

/** Reads a whole backup without writing anything: after this it is known that all of it can be read. */
export async function checkBackup(
  backup: ReadableBackup,
  repository: Repository,
  onProgress: (done: number, total: number) => void,
): Promise<BackupReport> {
  const contents = { ...noContents };
  const report = { contents, missing: 0, different: 0, workedOn: 0 };
  const known = await knownPatients(repository);
  let done = 0;
  for await (const entry of backup.entries()) {
    onProgress(done++, backup.total);
    if (entry.kind === 'patient') contents.patients++;
    if (entry.kind === 'visit') contents.sessions++;
    if (entry.kind === 'plan') contents.plans++;
    if (entry.kind === 'session') {
      contents.recordings++;
      if (entry.video !== null) contents.videos++;
    }
    if (entry.kind === 'note') {
      if (await replacesLibrary(entry, repository)) report.different++;
      continue;
    }
    if (entry.kind === 'patient') {
      if (!known.has(entry.patient.pseudonym)) report.missing++;
      continue;
    }
    const standing = await standingOf(entry, repository);
    if (standing.kind === 'new') report.missing++;
    if (standing.kind !== 'different') continue;
    report.different++;
    if (standing.isWorkedOn === true) report.workedOn++;
  }
  return report;
}

/**
 * Restores what is missing here, each entry whole or not at all; what is kept here and not in the backup stays.
 *
 * @param replaces  whether other versions kept here are replaced by the backup's
 */
export async function restoreBackup(
  backup: ReadableBackup,
  repository: Repository,
  replaces: boolean,
  onProgress: (done: number, total: number) => void,
): Promise<void> {
  const known = await knownPatients(repository);
  let done = 0;
  for await (const entry of backup.entries()) {
    onProgress(done++, backup.total);
    if (entry.kind === 'note') await restoreNote(entry, repository, replaces);
    else if (entry.kind === 'patient') await restorePatient(entry.patient, known, repository);
    else {
      const standing = await standingOf(entry, repository);
      if (standing.kind === 'new' || (standing.kind === 'different' && replaces))
        await restore(entry, standing, repository);
    }
  }
}

async function restore(
  entry: Exclude<BackupEntry, { kind: 'note' | 'patient' }>,
  { edition }: Standing,
  repository: Repository,
): Promise<void> {
  if (entry.kind === 'visit') await repository.sessions.save(entry.session);
  else if (entry.kind === 'plan') {
    const { id, text, savedAt } = entry.plan;
    await repository.plans.save(id, text, savedAt);
  } else {
    const { recording, file, video } = entry;
    await repository.keepTogether(null, [
      { recording, ...file, video, ...(edition === undefined ? {} : { expects: edition }) },
    ]);
  }
}

/** The ids of the patients who are kept here, by pseudonym. */
async function knownPatients({ patients }: Repository): Promise<ReadonlyMap<string, string>> {
  return new Map((await patients.list()).found.map(({ id, pseudonym }) => [pseudonym, id]));
}

/** A patient who is kept here keeps what was noted last, and the plans and looked-at sessions of both. */
async function restorePatient(
  patient: PatientDocument,
  known: ReadonlyMap<string, string>,
  { patients }: Repository,
): Promise<void> {
  const here = known.get(patient.pseudonym);
  if (here === undefined) await patients.add(patient);
  else await patients.update(here, (kept) => unlessSame(kept, mergePatients(kept, patient)));
}

function unlessSame<Value>(before: Value, after: Value): Value {
  return JSON.stringify(before) === JSON.stringify(after) ? before : after;
}

/** Keys are added to those that are here, and libraries become one; a draft or a name only where there is none. */
async function restoreNote(
  entry: { name: string; text: string },
  repository: Repository,
  replaces: boolean,
): Promise<void> {
  const { name, text } = entry;
  const { notes, library } = repository;
  const here = (await notes.read()).get(name) ?? '';
  if (here === '' || (replaces && (await replacesLibrary(entry, repository)))) await notes.write(name, text);
  else if (name === 'keys') await notes.write(name, withKeys(here, text));
  else if (name === 'library')
    try {
      await library.change((kept) => mergeLibraries(kept, parseDocument(text, libraryKind)));
    } catch (error) {
      // Where one of them can't be read, or both are more than one can hold, the one here stays.
      if (!isProblem(error, 'file') && !(error instanceof StorageProblem && error.reason === 'damaged'))
        throw error;
    }
}

/** Whether it is a library, and the one here can't be read. */
async function replacesLibrary({ name, text }: { name: string; text: string }, { library }: Repository) {
  if (name !== 'library') return false;
  try {
    parseDocument(text, libraryKind);
  } catch {
    return false;
  }
  return library.read().then(
    () => false,
    (error: unknown) => error instanceof StorageProblem && error.reason === 'damaged',
  );
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
  entry: Exclude<BackupEntry, { kind: 'note' | 'patient' }>,
  { sessions, plans, recordings }: Repository,
): Promise<Standing> {
  const isSame = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);
  const standing = (here: unknown, there: unknown): Standing => ({
    kind: here === null ? 'new' : isSame(here, there) ? 'same' : 'different',
  });
  // What is kept here and can't be read is another version, which the backup may replace.
  const unreadable = () => undefined;
  if (entry.kind === 'visit')
    return standing(await sessions.find(entry.session.id).catch(unreadable), entry.session);
  if (entry.kind === 'plan')
    return standing(await plans.find(entry.plan.id).catch(unreadable), entry.plan.text);
  const kept = await recordings.find(entry.recording.id).catch(unreadable);
  if (kept === undefined) return { kind: 'different' };
  if (kept === null) return { kind: 'new', edition: null };
  const { recording, facts, edition } = kept;
  const lacksVideo = facts.video === null && entry.video !== null;
  return {
    kind: lacksVideo ? 'different' : standing(recording, entry.recording).kind,
    isWorkedOn: isWorkedOn(recording),
    edition,
  };
}
