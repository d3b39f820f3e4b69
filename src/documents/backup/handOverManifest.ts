import { Problem } from '#core/problem';
import { bySchema } from '../reading/bySchema';
import { headWords, type DocumentKind } from '../reading/documentKind';
import { parseDocument } from '../reading/readDocument';
import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';
import { backupFile, type BackupFile } from './backupManifest';

/** Bumped when a field is added, removed or changes its meaning; older versions are migrated on reading. */
export const handOverVersion = 1;

/** What one hand-over may hold: years of sessions; our own choice, no source. */
export const handOverBounds = {
  manifestBytes: 5_000_000,
  files: 10_000,
  /** Of all parts together, packed. */
  bytes: 500_000_000,
} as const;

export const handOverAgain = 'Ask your colleague to hand the patient over again.';

/** The first line of a patient's record that is handed over: what follows is as in a backup. */
export const handOverSchema = z.strictObject({
  format: z.literal('overfoot-hand-over'),
  version: z.literal(handOverVersion),
  createdAt: z.iso.datetime(),
  by: z.string().min(1).max(longestText.who).describe('Initials.'),
  files: z.array(backupFile).min(1).max(handOverBounds.files),
});
export type HandOverManifest = z.infer<typeof handOverSchema>;

const manifestKind: DocumentKind<HandOverManifest> = {
  problem: 'file',
  format: 'overfoot-hand-over',
  version: handOverVersion,
  bringUp: (older) => older,
  read: bySchema(handOverSchema),
  words: headWords('patient’s record', handOverAgain),
};

/**
 * Reads the first line, which is untrusted.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readHandOverManifest(line: string): HandOverManifest {
  return parseDocument(line, manifestKind);
}

/**
 * That the parts are those of one patient, whole and without videos or notes.
 *
 * @param followingBytes  bytes that follow the signature
 * @throws Problem  where they are not
 */
export function assertHandedOver(files: readonly BackupFile[], followingBytes: number): void {
  const isOne = files[0]?.kind === 'patient' && files.slice(1).every(({ kind }) => kind !== 'patient');
  const recordings = files.flatMap((file) => (file.kind === 'session' ? file.sessionId : []));
  const isWhole =
    isOne &&
    files.every(({ kind }) => kind !== 'note' && kind !== 'video') &&
    new Set(recordings).size === recordings.length &&
    files.reduce((sum, { bytes }) => sum + bytes, 0) === followingBytes;
  if (!isWhole)
    throw new Problem('file', `It is not whole, or holds more than one patient. ${handOverAgain}`);
  if (followingBytes > handOverBounds.bytes) throw new Problem('file', `It is too large. ${handOverAgain}`);
}
