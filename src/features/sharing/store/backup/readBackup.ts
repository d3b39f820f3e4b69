import {
  backupBounds,
  readBackupManifest,
  takeAnotherCopy,
  type BackupFile,
} from '#documents/backup/backupManifest';
import { ParcelProblem } from '#documents/parcel/parcelProblem';
import { z } from '#documents/schema/zod';
import { parseSession } from '#documents/recording/parseSession';
import { readVisit } from '#documents/session/readVisit';
import type { SessionDocument } from '#documents/recording/sessionDocument';
import type { VisitDocument } from '#documents/session/visitDocument';
import { planRecordSchema, type PlanRecord } from '#device/storage/keptSchemas';
import { firstLine } from '../firstLine';
import { hashOf, unpackPart } from '../packedPart';

const noteSchema = z.strictObject({ name: z.string().min(1).max(50), text: z.string().max(1_000_000) });

type SessionFile = Extract<BackupFile, { kind: 'session' }>;

/** One thing of a backup, read and checked. */
export type BackupEntry =
  | { kind: 'visit'; visit: VisitDocument }
  | { kind: 'plan'; plan: PlanRecord }
  | { kind: 'note'; name: string; text: string }
  | {
      kind: 'session';
      session: SessionDocument;
      file: Pick<SessionFile, 'visitId' | 'fromVideo'>;
      video: Blob | null;
    };

export interface ReadableBackup {
  createdAt: string;
  /** How many entries there are, for telling how far it is. */
  total: number;
  /** The entries one after another, each checked as it comes, so that no more than one session is in memory. */
  entries(): AsyncGenerator<BackupEntry>;
}

/**
 * Opens what packBackup made, which may be anything. To write nothing before all is checked, go through `entries` twice.
 *
 * @throws ParcelProblem, SessionProblem  with a sentence, `entries` too
 */
export async function readBackup(blob: Blob): Promise<ReadableBackup> {
  const head = await firstLine(blob, backupBounds.manifestBytes);
  if (head === null) throw new ParcelProblem('It is no backup from Overfoot.');
  const { createdAt, files } = readBackupManifest(head.line, blob.size - head.endBytes);
  return {
    createdAt,
    total: files.filter(({ kind }) => kind !== 'video').length,
    async *entries() {
      let from = head.endBytes;
      let waiting: Extract<BackupEntry, { kind: 'session' }> | null = null;
      for (const file of files) {
        const part = blob.slice(from, from + file.bytes, file.kind === 'video' ? file.type : '');
        from += file.bytes;
        if ((await hashOf(part)) !== file.sha256)
          throw new ParcelProblem(`A part of it was changed or lost. ${takeAnotherCopy}`);
        // A video stands behind its session: a session goes on once it is known whether one comes.
        if (file.kind === 'video') {
          if (waiting !== null) yield { ...waiting, video: part };
          waiting = null;
          continue;
        }
        if (waiting !== null) yield waiting;
        waiting = null;
        const text = await unpackPart(part, file.unpackedBytes, takeAnotherCopy);
        if (file.kind === 'session') waiting = { ...readSessionEntry(text, file), video: null };
        else yield readDocumentEntry(file.kind, text);
      }
      if (waiting !== null) yield waiting;
    },
  };
}

function readSessionEntry(text: string, { sessionId, visitId, fromVideo }: SessionFile) {
  const session = parseSession(text);
  if (session.id !== sessionId)
    throw new ParcelProblem(`A session in it is not the one that it says. ${takeAnotherCopy}`);
  return { kind: 'session' as const, session, file: { visitId, fromVideo } };
}

function readDocumentEntry(kind: 'visit' | 'plan' | 'note', text: string): BackupEntry {
  const damaged = new ParcelProblem(`A ${kind} in it can’t be read. ${takeAnotherCopy}`);
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    throw damaged;
  }
  if (kind === 'visit') return { kind, visit: readVisit(data) };
  const result = (kind === 'plan' ? planRecordSchema : noteSchema).safeParse(data);
  if (!result.success) throw damaged;
  return 'savedAt' in result.data ? { kind: 'plan', plan: result.data } : { kind: 'note', ...result.data };
}
