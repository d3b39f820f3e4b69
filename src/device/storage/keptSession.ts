import { readSession } from '#documents/recording/readSession';
import { readSessionHead } from '#documents/recording/readSessionHead';
import type { SessionDocument } from '#documents/recording/sessionDocument';
import { sessionHead, type SessionHead } from '#documents/recording/sessionHead';
import type { Records } from './records';
import { jointsKey } from './sessionChanges';

/** Reads a kept session with its joints; null where there is none. */
export async function readKeptSession(records: Records, id: string): Promise<SessionDocument | null> {
  const [kept, joints] = await Promise.all([records.get('sessions', id), records.get('rows', jointsKey(id))]);
  if (kept === undefined) return null;
  return readSession(hasJoints(kept) ? kept : { ...(kept as object), observed: joints });
}

/** Reads a kept session without its joints, which takes a tenth of the time; null where there is none. */
export async function readKeptHead(records: Records, id: string): Promise<SessionHead | null> {
  const kept = await records.get('sessions', id);
  if (kept === undefined) return null;
  return hasJoints(kept) ? sessionHead(readSession(kept)) : readSessionHead(kept);
}

/** Whether a session was kept by a version of the program that kept the joints within it. */
export function hasJoints(kept: unknown): boolean {
  return typeof kept === 'object' && kept !== null && 'observed' in kept;
}
