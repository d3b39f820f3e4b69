import { planRecordSchema } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { readPatient } from '#documents/patient/readPatient';
import type { SharedDocuments } from '#documents/practice/mergeShared';
import type { SharedKind } from '#documents/practice/sharedHead';
import { readRecording } from '#documents/recording/readRecording';
import { plainName } from '#documents/schema/plainName';
import { readSession } from '#documents/session/readSession';
import { tombstoneName } from '#shell/receivedNotes';
import { patientOf } from '../handOver/packHandOver';

/** A document that is kept here, and whose it is. */
export type KeptShared = {
  [Kind in SharedKind]: { kind: Kind; document: SharedDocuments[Kind]; pseudonym: string };
}[SharedKind];

/** A document as it is kept here; null where there is none. */
export async function findShared(
  { replica, sessions, recordings }: Repository,
  kind: SharedKind,
  id: string,
): Promise<KeptShared | null> {
  if (kind === 'patient') {
    const document = await replica.find('patient', id);
    return document === null ? null : { kind, document, pseudonym: document.pseudonym };
  }
  if (kind === 'plan') {
    const document = await replica.find('plan', id);
    return document === null ? null : { kind, document, pseudonym: patientOf(document.text) ?? '' };
  }
  if (kind === 'session') {
    const document = await replica.find('session', id);
    return document === null ? null : { kind, document, pseudonym: document.patient };
  }
  const kept = await recordings.find(id);
  const session =
    kept === null || kept.facts.visitId === null ? null : await sessions.find(kept.facts.visitId);
  if (kept === null || session === null) return null;
  return { kind, document: kept.recording, pseudonym: session.patient };
}

/**
 * Reads an untrusted document.
 *
 * @throws Problem  with a sentence, or ZodError
 */
export function readShared(kind: SharedKind, document: unknown): KeptShared {
  switch (kind) {
    case 'patient': {
      const patient = readPatient(document);
      if (plainName(patient.pseudonym) !== patient.pseudonym)
        throw new Error('It has characters that can’t be seen.');
      return { kind, document: patient, pseudonym: patient.pseudonym };
    }
    case 'plan': {
      const plan = planRecordSchema.parse(document);
      return { kind, document: plan, pseudonym: patientOf(plan.text) ?? '' };
    }
    case 'session': {
      const session = readSession(document);
      return { kind, document: session, pseudonym: session.patient };
    }
    case 'recording':
      return { kind, document: readRecording(document), pseudonym: '' };
  }
}

/** Deletes a document that a colleague deleted, as if it had been deleted here. */
export async function removeShared(
  repository: Repository,
  kind: SharedKind,
  id: string,
  at: string,
): Promise<void> {
  const kept = await findShared(repository, kind, id).catch(() => null);
  if (kind === 'session') {
    await repository.notes.write(tombstoneName(id), at.slice(0, 10));
    await repository.sessions.remove(id);
  } else if (kind === 'plan') await repository.plans.remove(id);
  else if (kind === 'recording') await repository.recordings.remove(id);
  else {
    await repository.patients.remove(id);
    if (kept !== null) repository.reportDeleted(kept.pseudonym);
  }
}
