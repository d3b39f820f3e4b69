import type { SessionDocument, Settlement } from './sessionDocument';

/**
 * Who says that what was said in a session is settled; the therapist's word comes first. Null where nobody does.
 *
 * @param sessions  all of the person's; what is said in one may be settled in a later one
 * @param reopenedAt  when it was opened again: nothing from before counts; null where it never was
 */
export function settlementOf(
  id: string,
  sessions: readonly Pick<SessionDocument, 'settles'>[],
  reopenedAt: string | null = null,
): Settlement | null {
  const since = reopenedAt === null ? -Infinity : Date.parse(reopenedAt);
  const found = sessions
    .flatMap(({ settles }) => settles)
    .filter(({ visitId, at }) => visitId === id && Date.parse(at) > since);
  return found.find(({ by }) => by === 'therapist') ?? found[0] ?? null;
}
