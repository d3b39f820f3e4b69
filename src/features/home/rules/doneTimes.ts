import type { SessionDocument } from '#documents/session/sessionDocument';

/**
 * When a plan was followed: each session in which a set was done, or which ended as the rule on pain says. ISO 8601.
 */
export function doneTimes(
  sessions: readonly Pick<SessionDocument, 'planId' | 'startedAt' | 'sets' | 'endedBecause'>[],
  planId: string,
): string[] {
  return sessions
    .filter((session) => session.planId === planId)
    .filter(({ sets, endedBecause }) => sets.length > 0 || endedBecause?.reason === 'pain')
    .map(({ startedAt }) => startedAt);
}
