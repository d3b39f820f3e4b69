import { Problem } from '#core/problem';
import { parcelBounds } from '../parcel/parcelManifest';
import { bySchema } from '../reading/bySchema';
import { headWords, type DocumentKind } from '../reading/documentKind';
import { parseDocument } from '../reading/readDocument';
import { z } from '../schema/zod';

/**
 * Bumped when a field is added, removed or changes its meaning; older versions are migrated on reading. Version 2 added
 * patients.
 */
export const backupVersion = 2;

/** What a backup may hold at most; reading one takes no more memory than its first line and its largest document. */
export const backupBounds = {
  manifestBytes: 50_000_000,
  files: 100_000,
  /** A patient, session, plan or note, unpacked. */
  documentBytes: 2_000_000,
} as const;

const size = (max: number) => z.int().min(0).max(max);
const packed = {
  bytes: size(parcelBounds.sessionBytes),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
};

/** What follows the manifest, in this order, without gaps: documents are JSON, deflated. */
export const backupFile = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.enum(['patient', 'visit', 'plan', 'note']),
    unpackedBytes: size(backupBounds.documentBytes),
    ...packed,
  }),
  z.strictObject({
    kind: z.literal('session'),
    sessionId: z.uuid(),
    visitId: z.uuid().nullable(),
    /** Whether its joints come from its video: 'waiting', 'done', 'declined', 'impossible'. */
    fromVideo: z.enum(['waiting', 'done', 'declined', 'impossible']),
    unpackedBytes: size(parcelBounds.unpackedSessionBytes),
    ...packed,
  }),
  z.strictObject({
    kind: z.literal('video'),
    /** It directly follows its recording. */
    sessionId: z.uuid(),
    type: z.enum(['video/mp4', 'video/webm']),
    bytes: size(parcelBounds.videoBytes),
    sha256: packed.sha256,
  }),
]);
export type BackupFile = z.infer<typeof backupFile>;

/** The first line of a backup. */
export const backupManifestSchema = z.strictObject({
  format: z.literal('overfoot-backup'),
  version: z.literal(backupVersion),
  createdAt: z.iso.datetime(),
  files: z.array(backupFile).max(backupBounds.files),
});
export type BackupManifest = z.infer<typeof backupManifestSchema>;

export const takeAnotherCopy = 'Take another copy of the backup.';

const manifestKind: DocumentKind<BackupManifest> = {
  problem: 'file',
  format: 'overfoot-backup',
  version: backupVersion,
  bringUp: (older, version) => (version === 1 ? { ...older, version: backupVersion } : older),
  read: bySchema(backupManifestSchema),
  words: headWords('backup', takeAnotherCopy),
};

/**
 * Reads a backup's first line, which is untrusted.
 *
 * @param followingBytes  bytes that follow it
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readBackupManifest(line: string, followingBytes: number): BackupManifest {
  const head = parseDocument(line, manifestKind);
  const { files } = head;
  const recordings = files.flatMap((file) => (file.kind === 'session' ? file.sessionId : []));
  const isWhole =
    new Set(recordings).size === recordings.length &&
    files.reduce((sum, { bytes }) => sum + bytes, 0) === followingBytes &&
    files.every((file, index) => {
      const before = files[index - 1];
      return file.kind !== 'video' || (before?.kind === 'session' && before.sessionId === file.sessionId);
    });
  if (!isWhole) throw new Problem('file', `It is not whole, or not in order. ${takeAnotherCopy}`);
  return head;
}
