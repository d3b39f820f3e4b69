import { Problem } from '#core/problem';
import {
  assertHandedOver,
  handOverAgain,
  handOverBounds,
  readHandOverManifest,
} from '#documents/backup/handOverManifest';
import { parsePlan } from '#documents/plan/parsePlan';
import { plainName } from '#documents/schema/plainName';
import { readEntries, type BackupEntry } from '../backup/openBackup';
import { firstLine } from '../firstLine';
import { readSigned } from '../parcel';

/** One thing of a hand-over. */
export type HandOverEntry = Exclude<BackupEntry, { kind: 'note' }>;

export interface ReadableHandOver {
  createdAt: string;
  /** Initials, as the sender wrote them. */
  by: string;
  /** The public key that signed it. */
  signer: string;
  /** The patient first; each is checked as it is read. */
  entries(): AsyncGenerator<HandOverEntry>;
}

/**
 * Opens what packHandOver made, which may be anything. To write nothing before all is checked, go through `entries` twice.
 *
 * @throws Problem  with a sentence, `entries` too
 */
export async function openHandOver(blob: Blob): Promise<ReadableHandOver> {
  const head = await firstLine(blob, handOverBounds.manifestBytes);
  if (head === null) throw new Problem('file', 'It is not a patient’s record from Overfoot.');
  const { createdAt, by, files } = readHandOverManifest(head.line);
  const { sender, endBytes } = await readSigned(blob, head, handOverAgain);
  if (sender === null) throw new Problem('file', `It is not signed. ${handOverAgain}`);
  assertHandedOver(files, blob.size - endBytes);
  return {
    createdAt,
    by,
    signer: sender.key,
    entries: () => ofOnePatient(readEntries(blob, endBytes, files)),
  };
}

/** @throws Problem  where anything in it is not the first one's, who is a patient */
async function* ofOnePatient(entries: AsyncIterable<BackupEntry>): AsyncGenerator<HandOverEntry> {
  const mixed = new Problem('file', `Not all in it belongs to one patient. ${handOverAgain}`);
  let pseudonym: string | null = null;
  const sessions = new Set<string>();
  for await (const entry of entries) {
    if (entry.kind === 'note') throw mixed;
    if (entry.kind === 'patient') {
      ({ pseudonym } = entry.patient);
      if (plainName(pseudonym) !== pseudonym)
        throw new Problem('file', `The pseudonym in it has characters that can’t be seen. ${handOverAgain}`);
    }
    if (entry.kind === 'visit') {
      if (entry.session.patient !== pseudonym) throw mixed;
      sessions.add(entry.session.id);
    }
    if (entry.kind === 'plan') {
      const plan = parsePlan(entry.plan.text);
      if (plan.patient !== pseudonym || plan.id !== entry.plan.id) throw mixed;
    }
    if (entry.kind === 'session' && !sessions.has(entry.file.visitId ?? '')) throw mixed;
    yield entry;
  }
}
