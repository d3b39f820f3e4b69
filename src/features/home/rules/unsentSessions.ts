import type { PlanDocument } from '#documents/plan/planDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';

/** A session that the therapist has not been sent. */
export interface UnsentSession {
  id: string;
  /** ISO 8601. */
  startedAt: string;
  sets: number;
  /** Whether any of them was filmed. */
  isFilmed: boolean;
  /** Whether it holds nothing but why nothing was done. */
  isAnswer: boolean;
  /** The therapist's public key, from its plan. */
  recipient: string;
}

/** After this time nobody is reminded any more; our own choice, no source. */
const remindedForMs = 30 * 24 * 3_600_000;

/**
 * Sessions of plans that say where to send them, broken-off ones too, that were not sent from here.
 *
 * @param sessions  newest first
 * @param isSettled  whether one was sent from this device, or came to it from another
 */
export function unsentSessions(
  sessions: readonly SessionDocument[],
  plans: readonly Pick<PlanDocument, 'id' | 'returnKey'>[],
  isSettled: (sessionId: string) => boolean,
  nowMs: number,
): UnsentSession[] {
  return sessions.flatMap(({ id, planId, startedAt, sets, silence }) => {
    const recipient = plans.find((plan) => plan.id === planId)?.returnKey ?? null;
    const isOld = nowMs - Date.parse(startedAt) > remindedForMs;
    if (recipient === null || isOld || isSettled(id)) return [];
    const isFilmed = sets.some(({ sessionId: recordingId }) => recordingId !== null);
    return [{ id, startedAt, sets: sets.length, isFilmed, isAnswer: silence !== null, recipient }];
  });
}
