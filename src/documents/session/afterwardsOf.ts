import type { Afterwards, SessionDocument } from './sessionDocument';

/**
 * How the knee was after a session, as a later one says; null where none does. An answer goes before a question that was
 * left open.
 *
 * @param sessions  all of the person's, in any order
 */
export function afterwardsOf(
  id: string,
  sessions: readonly Pick<SessionDocument, 'afterLast'>[],
): Afterwards | null {
  const said = sessions.flatMap(({ afterLast }) => (afterLast?.visitId === id ? [afterLast] : []));
  return said.find(({ worst }) => worst !== null) ?? said[0] ?? null;
}
