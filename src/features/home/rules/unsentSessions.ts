import type { PlanDocument } from '#documents/plan/planDocument';
import { concernsOf } from '#documents/session/concernsOf';
import type { SessionDocument } from '#documents/session/sessionDocument';

/** A session that the therapist has not been sent. */
export interface UnsentSession {
  id: string;
  planId: string | null;
  /** ISO 8601. */
  startedAt: string;
  /** Those included whose recording was interrupted, and is not kept yet. */
  sets: number;
  /** Whether it has no end, since the page was closed or the device went off. */
  isBrokenOff: boolean;
  /** Whether any of them was filmed. */
  isFilmed: boolean;
  /** Whether it holds nothing but why nothing was done. */
  isAnswer: boolean;
  /** The public keys that its plan carries. */
  recipients: readonly string[];
}

/** After this time nobody is reminded any more; our own choice, no source. */
const remindedForMs = 30 * 24 * 3_600_000;

/**
 * Sessions of plans that say where to send them, broken-off ones too, that were not sent from here. Where nothing was
 * done, only those in which something was said that somebody should read.
 *
 * @param sessions  newest first
 * @param isSettled  whether one was sent from this device, or came to it from another
 * @param interruptedIn  sets of a session whose recording was interrupted and is not kept yet
 */
export function unsentSessions(
  sessions: readonly SessionDocument[],
  plans: readonly Pick<PlanDocument, 'id' | 'returnKeys'>[],
  isSettled: (sessionId: string) => boolean,
  interruptedIn: (sessionId: string) => number,
  nowMs: number,
): UnsentSession[] {
  return sessions.flatMap((session) => {
    const { id, planId, startedAt, endedAt, silence } = session;
    const recipients = plans.find((plan) => plan.id === planId)?.returnKeys ?? [];
    const isOld = nowMs - Date.parse(startedAt) > remindedForMs;
    const interrupted = interruptedIn(id);
    const sets = session.sets.length + interrupted;
    if (recipients.length === 0 || isOld || isSettled(id) || (sets === 0 && !saysSomething(session)))
      return [];
    const isFilmed =
      interrupted > 0 || session.sets.some(({ sessionId: recordingId }) => recordingId !== null);
    const isAnswer = silence !== null;
    return [{ id, planId, startedAt, sets, isBrokenOff: endedAt === null, isFilmed, isAnswer, recipients }];
  });
}

/** Whether a session in which nothing was done says anything of the body, or to the therapist. */
function saysSomething(session: SessionDocument): boolean {
  const { check, settles, endedBecause, remark, silence } = session;
  const isTakenBack = (check?.takenBack.length ?? 0) > 0;
  const isTold = silence !== null || endedBecause !== null || remark !== '' || settles.length > 0;
  return isTold || isTakenBack || concernsOf(session).length > 0;
}
