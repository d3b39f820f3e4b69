import { Problem } from '#core/problem';
import type { Repository } from '#device/storage/repository';
import type { LogEntry } from '#documents/patient/logEntry';
import { mergeHandedOver } from '#documents/patient/mergePatients';
import type { HandOver, PatientDocument } from '#documents/patient/patientDocument';
import { isWorkedOn } from '#documents/recording/keptWork';
import { reviewOnto } from '#documents/recording/reviewOnto';
import { withWordsOf } from '#documents/recording/withWordsOf';
import { tombstoneName } from '#shell/receivedNotes';
import type { HandOverEntry, ReadableHandOver } from './openHandOver';
import { patientOf, type HandedOver } from './packHandOver';
import { keepOtherReview, lastSigned, takeVersion, type Beside } from './takeVersion';

/** What is in a hand-over, and how it compares with what is kept here. */
export interface HandOverReport {
  patient: string;
  /** Whether a record under that pseudonym is kept here. */
  isKnown: boolean;
  contents: HandedOver;
  /** Sessions, plans and recordings that are not here. */
  missing: number;
  /** Sessions and plans that are here in another version: both are kept. */
  versions: number;
  /** Recordings that are here in another version: one of them is kept. */
  different: number;
  /** Of the different ones, recordings that were reviewed or corrected here. */
  workedOn: number;
  /** Sessions that were deleted here. */
  deleted: number;
}

/** How a hand-over is taken. */
interface Taking {
  /** Initials of who keeps the record here. */
  by: string;
  /** What is noted of the hand-over. */
  taken: HandOver;
  /** What is signed of it, where this is the record. */
  signed: (record: PatientDocument) => Promise<LogEntry>;
}

/** How an entry compares with what is kept here. */
type Standing = 'new' | 'same' | 'different';

/**
 * Reads a whole hand-over without writing anything.
 *
 * @throws Problem  where it can't be read, or has ids of what is kept of somebody else
 */
export async function checkHandOver(
  handOver: ReadableHandOver,
  repository: Repository,
): Promise<HandOverReport> {
  const contents: HandedOver = { sessions: 0, recordings: 0, plans: 0 };
  const report = {
    patient: '',
    isKnown: false,
    contents,
    missing: 0,
    versions: 0,
    different: 0,
    workedOn: 0,
    deleted: 0,
  };
  const notes = await repository.notes.read();
  for await (const entry of handOver.entries()) {
    if (entry.kind === 'patient') {
      const { id, pseudonym } = entry.patient;
      const byId = await repository.patients.find(id);
      if (byId !== null && byId.pseudonym !== pseudonym) throw notTheirs(byId.pseudonym);
      report.patient = pseudonym;
      report.isKnown = (await repository.patients.named(pseudonym)) !== null;
      continue;
    }
    if (entry.kind === 'visit') {
      contents.sessions++;
      if (notes.has(tombstoneName(entry.session.id))) report.deleted++;
    } else if (entry.kind === 'plan') contents.plans++;
    else contents.recordings++;
    const { standing, hasWork } = await standingOf(entry, repository);
    if (standing === 'new') report.missing++;
    if (standing !== 'different') continue;
    if (entry.kind !== 'session') report.versions++;
    else report.different++;
    if (hasWork) report.workedOn++;
  }
  return report;
}

/**
 * Adds what is not here. A recording that is here in another version stays unless it is to be replaced. The one that
 * counts has limits and remarks of both, and the record keeps corrections and cues of the other; videos stay in any case.
 * Of a session or plan the version that was signed last counts, and the record keeps the other. The records are merged:
 * nothing that either noted is lost.
 */
export async function takeHandOver(
  handOver: ReadableHandOver,
  repository: Repository,
  { replaces, ...parts }: Taking & { replaces: boolean },
): Promise<void> {
  let beside: Beside | null = null;
  for await (const entry of handOver.entries()) {
    if (entry.kind === 'patient') {
      const here = await repository.patients.named(entry.patient.pseudonym);
      const [signedHere, signedThere] = [await lastSigned(here), await lastSigned(entry.patient)];
      await takePatient(entry.patient, here, repository, parts, handOver.by);
      const patientId = here?.id ?? entry.patient.id;
      const by = { here: parts.by, there: handOver.by };
      beside = { repository, patientId, at: parts.taken.at, by, signedHere, signedThere };
      continue;
    }
    const { standing } = await standingOf(entry, repository);
    if (standing === 'same') continue;
    if (standing === 'new') await take(entry, repository);
    else if (entry.kind === 'session') await takeOtherSet(entry, replaces, repository, beside);
    else if (beside !== null) await takeVersion(entry, beside);
  }
}

/** Limits and remarks of both versions are in the one that counts. */
async function takeOtherSet(
  entry: Extract<HandOverEntry, { kind: 'session' }>,
  replaces: boolean,
  repository: Repository,
  beside: Beside | null,
): Promise<void> {
  const here = (await repository.recordings.find(entry.recording.id))!.recording;
  if (beside !== null) await keepOtherReview({ here, there: entry.recording }, replaces, beside);
  const [counts, other] = replaces ? [entry.recording, here] : [here, entry.recording];
  const both = withWordsOf(counts, other);
  const isAsJudged = JSON.stringify(both.limits) === JSON.stringify(counts.limits);
  const recording = isAsJudged ? both : reviewOnto(counts, both);
  if (JSON.stringify(recording) !== JSON.stringify(here)) await take({ ...entry, recording }, repository);
}

async function takePatient(
  patient: PatientDocument,
  here: PatientDocument | null,
  repository: Repository,
  { by, taken, signed }: Taking,
  giver: string,
): Promise<void> {
  const merged = (kept: PatientDocument) => mergeHandedOver(kept, patient, { here: by, there: giver });
  const logged = await signed(here === null ? patient : merged(here));
  const noted = (record: PatientDocument) => ({
    ...record,
    handOvers: [...record.handOvers, taken],
    log: [...record.log, logged],
  });
  if (here === null) await repository.patients.add(noted(patient));
  else await repository.patients.update(here.id, (kept) => noted(merged(kept)));
}

async function take(
  entry: Exclude<HandOverEntry, { kind: 'patient' }>,
  { sessions, plans, recordings, keepTogether }: Repository,
): Promise<void> {
  if (entry.kind === 'visit') return sessions.save(entry.session);
  if (entry.kind === 'plan') return plans.save(entry.plan.id, entry.plan.text, entry.plan.savedAt);
  const kept = await recordings.find(entry.recording.id);
  await keepTogether(null, [
    {
      recording: entry.recording,
      visitId: entry.file.visitId,
      fromVideo: kept?.facts.fromVideo ?? 'impossible',
      video: kept === null ? null : 'stays',
      expects: kept?.edition ?? null,
    },
  ]);
}

async function standingOf(
  entry: Exclude<HandOverEntry, { kind: 'patient' }>,
  { sessions, plans, recordings }: Repository,
): Promise<{ standing: Standing; hasWork: boolean }> {
  const compared = (here: unknown, there: unknown): Standing => {
    if (here === null) return 'new';
    return JSON.stringify(here) === JSON.stringify(there) ? 'same' : 'different';
  };
  if (entry.kind === 'visit') {
    const kept = await sessions.find(entry.session.id);
    if (kept !== null && kept.patient !== entry.session.patient) throw notTheirs(kept.patient);
    return { standing: compared(kept, entry.session), hasWork: false };
  }
  if (entry.kind === 'plan') {
    const kept = await plans.find(entry.plan.id);
    const whose = kept === null ? null : patientOf(kept);
    if (whose !== null && whose !== patientOf(entry.plan.text)) throw notTheirs(whose);
    return { standing: compared(kept, entry.plan.text), hasWork: false };
  }
  const kept = await recordings.find(entry.recording.id);
  if (kept !== null && kept.facts.visitId !== entry.file.visitId) throw notTheirs('');
  const standing = compared(kept?.recording ?? null, entry.recording);
  return { standing, hasWork: kept !== null && isWorkedOn(kept.recording) };
}

function notTheirs(patient: string): Problem {
  const whose = patient === '' ? 'another session' : patient;
  return new Problem(
    'file',
    `Part of it has the same id as what is kept here of ${whose}. Nothing was changed; ask your colleague about it.`,
  );
}
