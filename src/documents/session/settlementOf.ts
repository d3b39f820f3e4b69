import type { SessionDocument, Settlement } from './sessionDocument';

/**
 * Who says that what was said in a session is settled; the therapist's word comes first. Null where nobody does.
 *
 * @param sessions  all of the person's; what is said in one may be settled in a later one
 */
export function settlementOf(
  id: string,
  sessions: readonly Pick<SessionDocument, 'settles'>[],
): Settlement | null {
  const found = sessions.flatMap(({ settles }) => settles).filter(({ visitId }) => visitId === id);
  return found.find(({ by }) => by === 'therapist') ?? found[0] ?? null;
}
