import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';

/** What is signed; more kinds need a new version of the patient document. */
export const logKinds = [
  'decision',
  'limits',
  'corrections',
  'review',
  'review-withdrawn',
  'concern-settled',
  'session-settled',
  'given',
  'taken',
  'note-put-away',
  'note-put-back',
] as const;
export type LogKind = (typeof logKinds)[number];

const longestAbout = 200;
const longestKey = 100;
/** More devices than a practice has that sign one record without having seen each other's entries. */
const mostBefore = 100;

/** Who did what; never edited or removed. What does not fit its signature is read all the same, to be shown as such. */
export const logEntrySchema = z.strictObject({
  id: z.uuid(),
  at: z.iso.datetime(),
  by: z.string().max(longestText.who).describe('Initials; empty where the device knew none.'),
  what: z.enum(logKinds),
  about: z
    .string()
    .min(1)
    .max(longestAbout)
    .describe(
      'Id of the decision, recording, session or hand-over; of a note who made it, and when. `review-withdrawn` about a session: what was settled in it is open again.',
    ),
  after: z
    .array(z.uuid())
    .max(mostBefore)
    .describe('Ids of the latest entries before it, by which a missing one is noticed.'),
  key: z
    .string()
    .max(longestKey)
    .describe('The device’s public key, as in a parcel’s signature; empty where it could not sign.'),
  signature: z.string().max(longestKey).describe('Of the signed text; empty where it could not sign.'),
});
export type LogEntry = z.infer<typeof logEntrySchema>;

/**
 * The text whose UTF-8 bytes are signed: a JSON array without spaces, so that it has one form only. It names the
 * patient, so that an entry fits no other record.
 */
export function signedText(pseudonym: string, entry: Omit<LogEntry, 'signature'>): string {
  const { id, at, by, what, about, after, key } = entry;
  return JSON.stringify(['overfoot-log', 1, pseudonym, id, at, by, what, about, after, key]);
}

/** The ids of entries that no other entry comes after. */
export function latestIds(log: readonly Pick<LogEntry, 'id' | 'after'>[]): string[] {
  const followed = new Set(log.flatMap(({ after }) => after));
  return log.flatMap(({ id }) => (followed.has(id) ? [] : [id])).slice(-mostBefore);
}

/** The ids that are not among the entries: of those that some entry comes after, and of those seen before. */
export function missingIds(
  log: readonly Pick<LogEntry, 'id' | 'after'>[],
  seen: readonly string[] = [],
): string[] {
  const known = new Set(log.map(({ id }) => id));
  return [...new Set([...seen, ...log.flatMap(({ after }) => after)])].filter((id) => !known.has(id));
}

/**
 * The entries of both in order of time. Where one id stands for two different entries, both stay: at most one of them
 * fits its signature.
 */
export function bothLogs(here: readonly LogEntry[], there: readonly LogEntry[]): LogEntry[] {
  const textOf = (entry: LogEntry) => JSON.stringify([signedText('', entry), entry.signature]);
  const known = new Set(here.map(textOf));
  return [...here, ...there.filter((entry) => !known.has(textOf(entry)))].sort(
    (a, b) => Date.parse(a.at) - Date.parse(b.at),
  );
}

/** Whether all that was in a log still is, unchanged. */
export function keepsLog(before: readonly LogEntry[], after: readonly LogEntry[]): boolean {
  return before === after || bothLogs(after, before).length === after.length;
}
