import type { LogEntry } from '#documents/patient/logEntry';
import { reopeningsOf } from '#documents/patient/reopeningsOf';
import { settlementOf } from '#documents/session/settlementOf';
import type { ListedSession } from './listedSession';

/**
 * Sessions with what was opened again in them: it is open until somebody settles it after that. One in which
 * nothing was stays the same object.
 *
 * @param sessions  all of the patient's, or of several
 * @param log  of the patient's record, or of several
 */
export function withReopened(
  sessions: readonly ListedSession[],
  log: readonly LogEntry[],
): readonly ListedSession[] {
  const reopenings = reopeningsOf(log);
  if (reopenings.size === 0) return sessions;
  return sessions.map((session) => {
    const reopened = reopenings.get(session.id);
    if (reopened === undefined) return session;
    const theirs = sessions.filter(({ patient }) => patient === session.patient);
    const settlement = settlementOf(session.id, theirs, reopened.at);
    const isOpen = settlement === null && (session.isOpen || session.settlement !== null);
    return { ...session, reopened, settlement, isOpen };
  });
}
