import { Problem } from '#core/problem';
import { bySchema } from '../reading/bySchema';
import { headWords, type DocumentKind } from '../reading/documentKind';
import { parseDocument } from '../reading/readDocument';
import { isFields } from '../schema/isFields';
import { z } from '../schema/zod';
import { bringUpSession } from '../session/bringUpSession';
import { sessionSchema } from '../session/sessionDocument';

/**
 * Bumped when a field is added, removed or changes its meaning, also in the session that it holds. Version 1 had no
 * time of sending and no signature; version 2 had session documents of version 1, version 3 those of version 2, and
 * version 4 those of version 3.
 */
export const parcelVersion = 5;

/** What a parcel may hold at most; docs/parcel-format.md says how much memory that takes. */
export const parcelBounds = {
  manifestBytes: 1_000_000,
  senderBytes: 1000,
  files: 200,
  /** A recording document deflated, and unpacked: the longest that is accepted is about 80 MB. */
  sessionBytes: 60_000_000,
  unpackedSessionBytes: 120_000_000,
  /** All recordings together, unpacked: they are in memory at the same time until all are checked. */
  unpackedBytes: 200_000_000,
  videoBytes: 2_000_000_000,
} as const;

const size = (max: number) => z.int().min(0).max(max);
const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

/** What follows the manifest, in this order, without gaps. */
const parcelFile = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('session'),
    sessionId: z.uuid(),
    bytes: size(parcelBounds.sessionBytes),
    unpackedBytes: size(parcelBounds.unpackedSessionBytes),
    sha256,
  }),
  z.strictObject({
    kind: z.literal('video'),
    sessionId: z.uuid(),
    type: z.enum(['video/mp4', 'video/webm']),
    bytes: size(parcelBounds.videoBytes),
    sha256,
  }),
]);
export type ParcelFile = z.infer<typeof parcelFile>;

/** The first line of a parcel: the session, and which of its files follow. */
export const manifestSchema = z.strictObject({
  format: z.literal('overfoot-parcel'),
  version: z.literal(parcelVersion),
  sentAt: z.iso.datetime().nullable(),
  visit: sessionSchema,
  files: z.array(parcelFile).max(parcelBounds.files),
});
export type ParcelManifest = z.infer<typeof manifestSchema>;

export const askAgain = 'Ask the patient to send it again.';

const manifestKind: DocumentKind<ParcelManifest> = {
  problem: 'file',
  format: 'overfoot-parcel',
  version: parcelVersion,
  bringUp: bringUpManifest,
  read: bySchema(manifestSchema),
  words: headWords('session', askAgain),
};

function bringUpManifest(older: object, version: number): object {
  if (![1, 2, 3, 4].includes(version)) return older;
  const { visit } = older as { visit?: unknown };
  const session = isFields(visit) ? bringUpSession(visit, Number(visit['version'])) : visit;
  return { ...older, ...(version === 1 ? { sentAt: null } : {}), visit: session, version: parcelVersion };
}

/**
 * Reads a parcel's first line, which is untrusted.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readManifest(line: string): ParcelManifest {
  return parseDocument(line, manifestKind);
}

/**
 * Checks that a manifest lists what follows it, for sets of its session.
 *
 * @param followingBytes  bytes of the parts
 * @throws Problem  where it does not
 */
export function assertWhole({ visit: session, files }: ParcelManifest, followingBytes: number): void {
  const wanted = new Set(session.sets.flatMap(({ sessionId: recordingId }) => recordingId ?? []));
  const keys = files.map(({ kind, sessionId: recordingId }) => `${kind} ${recordingId}`);
  const recordings = new Set(
    files.flatMap(({ kind, sessionId: recordingId }) => (kind === 'session' ? recordingId : [])),
  );
  const isWhole =
    new Set(keys).size === keys.length &&
    files.every(({ sessionId: recordingId }) => wanted.has(recordingId) && recordings.has(recordingId)) &&
    files.reduce((sum, { bytes }) => sum + bytes, 0) === followingBytes;
  const unpackedBytes = files.reduce(
    (sum, file) => sum + (file.kind === 'session' ? file.unpackedBytes : 0),
    0,
  );
  if (unpackedBytes > parcelBounds.unpackedBytes)
    throw new Problem('file', `It would unpack to more than a session can hold. ${askAgain}`);
  if (!isWhole)
    throw new Problem('file', `It is not whole, or holds what belongs to no set of it. ${askAgain}`);
}
