import { Problem } from '#core/problem';
import { readRecordingAside } from '#device/reading/readRecordingAside';
import { planRecordSchema, type PlanRecord } from '#device/storage/keptSchemas';
import {
  backupBounds,
  readBackupManifest,
  takeAnotherCopy,
  type BackupFile,
} from '#documents/backup/backupManifest';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { readPatient } from '#documents/patient/readPatient';
import { parseJson } from '#documents/reading/parseJson';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { z } from '#documents/schema/zod';
import { readSession } from '#documents/session/readSession';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { firstLine } from '../firstLine';
import { hashOf, unpackPart } from '../packedPart';

const noteSchema = z.strictObject({ name: z.string().min(1).max(50), text: z.string().max(1_000_000) });

type RecordingFile = Extract<BackupFile, { kind: 'session' }>;

/** One thing of a backup, read and checked. */
export type BackupEntry =
  | { kind: 'patient'; patient: PatientDocument }
  | { kind: 'visit'; session: SessionDocument }
  | { kind: 'plan'; plan: PlanRecord }
  | { kind: 'note'; name: string; text: string }
  | {
      kind: 'session';
      recording: RecordingDocument;
      file: Pick<RecordingFile, 'visitId' | 'fromVideo'>;
      video: Blob | null;
    };

export interface ReadableBackup {
  createdAt: string;
  /** Number of entries, for reporting progress. */
  total: number;
  /** The entries one after another, each checked as it is read, so that no more than one recording is in memory. */
  entries(): AsyncGenerator<BackupEntry>;
}

/**
 * Opens what packBackup made, which may be anything. To write nothing before all is checked, go through `entries` twice.
 *
 * @throws Problem  with a sentence, `entries` too
 */
export async function openBackup(blob: Blob): Promise<ReadableBackup> {
  const head = await firstLine(blob, backupBounds.manifestBytes);
  if (head === null) throw new Problem('file', 'It is not a backup from Overfoot.');
  const { createdAt, files } = readBackupManifest(head.line, blob.size - head.endBytes);
  return {
    createdAt,
    total: files.filter(({ kind }) => kind !== 'video').length,
    entries: () => readEntries(blob, head.endBytes, files),
  };
}

/** The parts of a backup, from this byte on, one after another; each is checked as it is read. */
export async function* readEntries(
  blob: Blob,
  fromBytes: number,
  files: readonly BackupFile[],
): AsyncGenerator<BackupEntry> {
  let from = fromBytes;
  let waiting: Extract<BackupEntry, { kind: 'session' }> | null = null;
  for (const file of files) {
    const part = blob.slice(from, from + file.bytes, file.kind === 'video' ? file.type : '');
    from += file.bytes;
    if ((await hashOf(part)) !== file.sha256)
      throw new Problem('file', `A part of it was changed or lost. ${takeAnotherCopy}`);
    // A video follows its recording: a recording is passed on once it is known whether it has one.
    if (file.kind === 'video') {
      if (waiting !== null) yield { ...waiting, video: part };
      waiting = null;
      continue;
    }
    if (waiting !== null) yield waiting;
    waiting = null;
    const text = await unpackPart(part, file.unpackedBytes, takeAnotherCopy);
    if (file.kind === 'session') waiting = { ...(await readRecordingEntry(text, file)), video: null };
    else yield readDocumentEntry(file.kind, text);
  }
  if (waiting !== null) yield waiting;
}

async function readRecordingEntry(
  text: string,
  { sessionId: recordingId, visitId: sessionId, fromVideo }: RecordingFile,
) {
  const recording = await readRecordingAside(text);
  if (recording.id !== recordingId)
    throw new Problem('file', `A recording in it does not match its entry. ${takeAnotherCopy}`);
  return { kind: 'session' as const, recording, file: { visitId: sessionId, fromVideo } };
}

function readDocumentEntry(kind: 'patient' | 'visit' | 'plan' | 'note', text: string): BackupEntry {
  const damaged = new Problem(
    'file',
    `A ${kind === 'visit' ? 'session' : kind} in it can’t be read. ${takeAnotherCopy}`,
  );
  let data: unknown;
  try {
    data = parseJson(text);
  } catch {
    throw damaged;
  }
  if (kind === 'patient') return { kind, patient: readPatient(data) };
  if (kind === 'visit') return { kind, session: readSession(data) };
  const result = (kind === 'plan' ? planRecordSchema : noteSchema).safeParse(data);
  if (!result.success) throw damaged;
  return 'savedAt' in result.data ? { kind: 'plan', plan: result.data } : { kind: 'note', ...result.data };
}
