import type { LimitsSet } from '#documents/recording/reviewSchema';
import type { ListedSession } from './listedSession';

/**
 * Limits that a set takes over: those that were set by hand last, to hold for later sets too, for the same patient, task and
 * side, in the same visit or an earlier one. Whether the set's own state lets it take them over is not looked at.
 *
 * A plan that is newer goes first. Where it is not kept, its age is not known: then only limits of a visit that followed
 * the same plan are newer for sure.
 *
 * @param visits  of anybody, in any order
 * @returns  null where there are none, and for a set of nobody
 */
export function takenLimits(sessions: readonly ListedSession[], recordingId: string): LimitsSet | null {
  const session = sessions.find(({ sets }) => sets.some(({ line }) => line.sessionId === recordingId));
  const own = session?.sets.find(({ line }) => line.sessionId === recordingId);
  if (session === undefined || own === undefined || session.patient === '') return null;
  const { task, side } = own.line;
  const { plan, patient, startedAt } = session;
  const candidates = sessions
    .filter((other) => other.patient === patient && Date.parse(other.startedAt) <= Date.parse(startedAt))
    .flatMap((other) =>
      other.sets.flatMap(({ line, limitsSet }) => {
        if (limitsSet === null || line.sessionId === recordingId) return [];
        if (line.task !== task || line.side !== side) return [];
        const isOutdated =
          plan !== null &&
          plan.id !== other.plan?.id &&
          (plan.madeAt === null || Date.parse(plan.madeAt) >= Date.parse(limitsSet.at));
        return isOutdated ? [] : [{ takenFrom: other.startedAt, ...limitsSet }];
      }),
    );
  return candidates.reduce<LimitsSet | null>(
    (newest, one) => (newest === null || Date.parse(one.at) > Date.parse(newest.at) ? one : newest),
    null,
  );
}
