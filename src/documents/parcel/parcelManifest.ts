import { Problem } from '#core/problem';
import { bySchema } from '../reading/bySchema';
import { headWords, type DocumentKind } from '../reading/documentKind';
import { parseDocument } from '../reading/readDocument';
import { z } from '../schema/zod';
import { sessionSchema } from '../session/sessionDocument';

/** Raised when a field is added, changes its meaning or goes. */
export const parcelVersion = 1;

/** What a parcel may hold at most; what that takes in memory stands in docs/parcel-format.md. */
export const parcelBounds = {
  manifestBytes: 1_000_000,
  files: 200,
  /** A session's document deflated, and unpacked: the longest recording that is read comes to about 80 MB. */
  sessionBytes: 60_000_000,
  unpackedSessionBytes: 120_000_000,
  /** All sessions together, unpacked: they are in memory at the same time until all are checked. */
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

/** The first line of a parcel: the visit, and what of it follows. */
export const manifestSchema = z.strictObject({
  format: z.literal('overfoot-parcel'),
  version: z.literal(parcelVersion),
  visit: sessionSchema,
  files: z.array(parcelFile).max(parcelBounds.files),
});
export type ParcelManifest = z.infer<typeof manifestSchema>;

export const askAgain = 'Ask the patient to send it again.';

const manifestKind: DocumentKind<ParcelManifest> = {
  problem: 'file',
  format: 'overfoot-parcel',
  version: parcelVersion,
  read: bySchema(manifestSchema),
  words: headWords('session', askAgain),
};

/**
 * Reads a parcel's first line, which may be anything.
 *
 * @param followingBytes  how much follows it
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readManifest(line: string, followingBytes: number): ParcelManifest {
  const head = parseDocument(line, manifestKind);
  const { visit: session, files } = head;
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
  return head;
}
