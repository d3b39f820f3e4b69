import { Problem } from '#core/problem';
import { publicKeySchema } from '../schema/publicKeySchema';
import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';
import { mostColleagues } from './peopleNote';

/**
 * Bumped when a field is added, removed or changes its meaning. Version 2 added the library, which is no patient's; all
 * else is written as version 1 still, so that devices with an earlier program read it.
 */
const sharedVersion = 2;

/** What is shared within a practice, in the order in which each needs the one before. */
export const sharedKinds = ['library', 'patient', 'plan', 'session', 'recording', 'piece'] as const;
export type SharedKind = (typeof sharedKinds)[number];

/** The version in which a document of a kind is written. */
export const sharedVersionOf = (kind: SharedKind) => (kind === 'library' ? 2 : 1);

/** The id of a practice's library: it has one, wherever each device's copy lies on the server. */
export const libraryId = 'library';

/** How much a device sends: patients, plans and sessions; recordings as well; their videos as well. */
export const sharedScopes = ['records', 'recordings', 'videos'] as const;
export type SharedScope = (typeof sharedScopes)[number];

export function isInScope(kind: SharedKind, scope: SharedScope): boolean {
  if (kind === 'piece') return scope === 'videos';
  return kind !== 'recording' || scope !== 'records';
}

export const sharedBounds = {
  /** The first line, bytes: 51 keys and 20 earlier versions take 8000. */
  headBytes: 20_000,
  /** Of one document: Apache CouchDB takes 8 MB unless it is set otherwise, and base64 makes 4 of 3. */
  bytes: 5_500_000,
  unpackedBytes: 40_000_000,
  /** Earlier versions that a device remembers of a document. */
  ancestors: 20,
};

const mostTakenOut = 100;

/** A version of a document by its content: the first 20 hexadecimal digits of a SHA-256. */
const contentHash = z.string().regex(/^[0-9a-f]{20}$/);

/** The first line of what is sealed; nothing of it is readable on the server. */
const headSchema = z.strictObject({
  format: z.literal('overfoot-shared'),
  version: z.union([z.literal(1), z.literal(sharedVersion)]),
  replicaId: z.uuid().describe('Random: under which it lies on the server.'),
  sender: publicKeySchema,
  recipients: z
    .array(publicKeySchema)
    .min(1)
    .max(mostColleagues + 1),
  takenOut: z.array(publicKeySchema).max(mostTakenOut).describe('Whom the sender took out of the practice.'),
  sealedAt: z.iso.datetime(),
  by: z.string().min(1).max(longestText.who).describe('Initials of who made this version.'),
  kind: z.enum(sharedKinds),
  id: z.string().min(1).max(100),
  patientId: z
    .uuid()
    .nullable()
    .describe('Whose it is: the id of the record at the sender; null for the library.'),
  sessionId: z
    .uuid()
    .nullable()
    .describe('Of a recording or a piece of its video: the session; otherwise null.'),
  content: contentHash.nullable().describe('Null: it was deleted.'),
  ancestors: z
    .array(contentHash)
    .max(sharedBounds.ancestors)
    .describe('Versions that this one was made from, the latest last.'),
  part: z
    .strictObject({
      bytes: z.int().min(1).max(sharedBounds.bytes),
      unpackedBytes: z.int().min(1).max(sharedBounds.unpackedBytes),
      sha256: z.string().regex(/^[0-9a-f]{64}$/),
    })
    .nullable()
    .describe('Of the deflated document that follows; null where it was deleted.'),
});
export type SharedHead = z.infer<typeof headSchema>;

/** @throws Problem  where it is none, or of a newer version */
export function readSharedHead(line: string): SharedHead {
  let data: unknown;
  try {
    data = JSON.parse(line);
  } catch {
    throw new Problem('file', 'It is not a document of this program.');
  }
  const { version } = (data ?? {}) as { version?: unknown };
  if (typeof version === 'number' && version > sharedVersion)
    throw new Problem('file', 'It was written by a newer version of the program. Update the program.');
  const result = headSchema.safeParse(data);
  if (!result.success || !isSound(result.data))
    throw new Problem('file', 'It is not a document of this program.');
  return result.data;
}

/** What the schema can't say. The library is changed, and never deleted. */
function isSound({ version, kind, id, patientId, content, part }: SharedHead): boolean {
  if ((content === null) !== (part === null) || version !== sharedVersionOf(kind)) return false;
  return kind === 'library' ? id === libraryId && patientId === null && content !== null : patientId !== null;
}
