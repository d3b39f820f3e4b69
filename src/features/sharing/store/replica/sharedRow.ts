import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { ReplicaRows } from '#device/storage/replicaRows';
import { sharedKinds, type SharedKind } from '#documents/practice/sharedHead';
import { z } from '#documents/schema/zod';

/** What this device knows of a document that is shared. */
const rowSchema = z.strictObject({
  replicaId: z.uuid().describe('Under which it lies on the server.'),
  /** The document's own kind and id; null once it was deleted, so that nothing says what it was. */
  of: z.strictObject({ kind: z.enum(sharedKinds), id: z.string() }).nullable(),
  patientId: z.uuid().nullable().describe('Null for the library.'),
  /** The version that the server has. */
  content: z.string(),
  ancestors: z.array(z.string()),
  /** Who made it, initials. */
  by: z.string(),
  /** For whom it is sealed there, abbreviated public keys. */
  sealedFor: z.array(z.string()),
  /** The edition that was last compared with it. */
  edition: z.string(),
});
export type SharedRow = z.infer<typeof rowSchema>;

const prefix = 'row:';
/** Up to where the sealed copies were looked at. */
export const feedKey = 'feed';

/** The key of a document's row: a hash, so that what was deleted can't be told from it. */
function rowKey(kind: SharedKind, id: string): string {
  const bytes = sha256(new TextEncoder().encode(`${kind}:${id}`));
  return `${prefix}${bytesToHex(bytes).slice(0, 32)}`;
}

/** Enough of a public key to tell it from the other ones of a practice. */
export const shortKey = (key: string): string => key.slice(4, 14);

export async function readRow(rows: ReplicaRows, kind: SharedKind, id: string): Promise<SharedRow | null> {
  return parseRow(await rows.get(rowKey(kind, id)));
}

export async function writeRow(
  rows: ReplicaRows,
  kind: SharedKind,
  id: string,
  row: SharedRow,
): Promise<void> {
  await rows.put(rowKey(kind, id), row);
}

export async function listRows(rows: ReplicaRows): Promise<SharedRow[]> {
  return (await rows.list(prefix)).flatMap(({ value }) => parseRow(value) ?? []);
}

/** For where the sealed copies were lost: everything counts as not sent, except that what was deleted stays so. */
export async function forgetSent(rows: ReplicaRows): Promise<void> {
  await rows.remove(feedKey);
  for (const row of await listRows(rows))
    if (row.of !== null) await writeRow(rows, row.of.kind, row.of.id, { ...row, sealedFor: [] });
}

/** Null for none, or for one that can't be read: then the document is sent again. */
function parseRow(value: unknown): SharedRow | null {
  const result = rowSchema.safeParse(value);
  return result.success ? result.data : null;
}
