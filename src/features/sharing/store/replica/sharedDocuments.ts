import { planRecordSchema } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { videoType } from '#device/storage/videos';
import { isEmptyLibrary } from '#documents/library/libraryDocument';
import { libraryKind } from '#documents/library/libraryKind';
import { readPatient } from '#documents/patient/readPatient';
import type { SharedDocuments } from '#documents/practice/mergeShared';
import type { SharedKind } from '#documents/practice/sharedHead';
import {
  pieceBytes,
  pieceId,
  pieceOf,
  sharedPieceSchema,
  type SharedPiece,
} from '#documents/practice/sharedPiece';
import { parseDocument } from '#documents/reading/readDocument';
import { readRecording } from '#documents/recording/readRecording';
import { plainName } from '#documents/schema/plainName';
import { readSession } from '#documents/session/readSession';
import { tombstoneName } from '#shell/receivedNotes';
import { patientOf } from '../handOver/packHandOver';
import { hashOf } from '../packedPart';

/** A document that is kept here, and whose it is; the library's pseudonym is null. */
export type KeptShared = {
  [Kind in SharedKind]: {
    kind: Kind;
    document: SharedDocuments[Kind];
    pseudonym: Kind extends 'library' ? null : string;
  };
}[SharedKind];

/** A document as it is kept here; null where there is none. */
export async function findShared(
  repository: Repository,
  kind: SharedKind,
  id: string,
): Promise<KeptShared | null> {
  const { replica, sessions, recordings } = repository;
  if (kind === 'library') {
    const { library } = await repository.library.read();
    return isEmptyLibrary(library) ? null : { kind, document: library, pseudonym: null };
  }
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
  if (kind === 'piece') return findPiece(repository, id);
  const kept = await recordings.find(id);
  const session =
    kept === null || kept.facts.visitId === null ? null : await sessions.find(kept.facts.visitId);
  if (kept === null || session === null) return null;
  return { kind, document: kept.recording, pseudonym: session.patient };
}

/** A piece of a video that is measured already, or never will be. */
async function findPiece(repository: Repository, id: string): Promise<KeptShared | null> {
  const { recordingId, index } = pieceOf(id);
  const [facts] = await repository.recordings.facts([recordingId]);
  const bytes = await readPiece(repository, id);
  if (bytes === null || facts === undefined || facts.visitId === null || facts.fromVideo === 'waiting')
    return null;
  const session = await repository.sessions.find(facts.visitId);
  if (session === null) return null;
  const document: SharedPiece = {
    id,
    recordingId,
    index,
    of: Math.ceil(bytes.ofBytes / pieceBytes),
    type: bytes.blob.type === 'video/mp4' ? 'video/mp4' : 'video/webm',
    bytes: bytes.blob.size,
    sha256: await hashOf(bytes.blob),
    fromVideo: facts.fromVideo,
  };
  return { kind: 'piece', document, pseudonym: session.patient };
}

/** The bytes of a piece, and how many the whole video has; null where it is not here. */
export async function readPiece(
  { recordings, videos }: Repository,
  id: string,
): Promise<{ blob: Blob; ofBytes: number } | null> {
  const { recordingId, index } = pieceOf(id);
  const [facts] = await recordings.facts([recordingId]);
  const video = facts?.video ?? null;
  const file = video === null ? null : await videos.read(video);
  if (file === null || file.size <= index * pieceBytes) return null;
  const blob = file.slice(index * pieceBytes, (index + 1) * pieceBytes, videoType(video!));
  return { blob, ofBytes: file.size };
}

/**
 * The pieces of the videos here that can be shared, and the video of each.
 *
 * @param recordingId  of all recordings where left out
 */
export async function listPieces(
  { recordings, videos }: Repository,
  recordingId?: string,
): Promise<{ id: string; edition: string }[]> {
  const sizes = new Map((await videos.list()).map(({ name, bytes }) => [name, bytes]));
  const listed =
    recordingId === undefined ? (await recordings.list()).found : await recordings.facts([recordingId]);
  return listed.flatMap(({ id, video, fromVideo }) => {
    const bytes = video === null || fromVideo === 'waiting' ? 0 : (sizes.get(video) ?? 0);
    return Array.from({ length: Math.ceil(bytes / pieceBytes) }, (_, index) => ({
      id: pieceId(id, index),
      edition: video!,
    }));
  });
}

/**
 * Reads an untrusted document.
 *
 * @throws Problem  with a sentence, or ZodError
 */
export function readShared(kind: SharedKind, document: unknown): KeptShared {
  switch (kind) {
    case 'library':
      // As text, since templates may hold anything: it is counted before it is read.
      return { kind, document: parseDocument(JSON.stringify(document), libraryKind), pseudonym: null };
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
    case 'piece':
      return { kind, document: sharedPieceSchema.parse(document), pseudonym: '' };
    case 'recording':
      return { kind, document: readRecording(document), pseudonym: '' };
  }
}

/** Deletes a document that a colleague deleted, as if it had been deleted here. */
export async function removeShared(
  repository: Repository,
  kind: Exclude<SharedKind, 'library'>,
  id: string,
  at: string,
): Promise<void> {
  const kept = await findShared(repository, kind, id).catch(() => null);
  if (kind === 'session') {
    await repository.notes.write(tombstoneName(id), at.slice(0, 10));
    await repository.sessions.remove(id);
  } else if (kind === 'piece')
    return; // The video goes with its recording.
  else if (kind === 'plan') await repository.plans.remove(id);
  else if (kind === 'recording') await repository.recordings.remove(id);
  else {
    await repository.patients.remove(id);
    if (kept?.kind === 'patient') repository.reportDeleted(kept.pseudonym);
  }
}
