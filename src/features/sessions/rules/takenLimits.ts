import type { LimitsSet } from '#documents/recording/reviewSchema';
import type { InboxVisit } from './inboxVisit';

/**
 * Limits that a set takes over: those that were set by hand last for the same patient, task and side, in the same visit
 * or an earlier one. Whether the set's own state lets it take them over is not looked at.
 *
 * A plan that is newer goes first. Where it is not kept, its age is not known: then only limits of a visit that followed
 * the same plan are newer for sure.
 *
 * @param visits  of anybody, in any order
 * @returns  null where there are none, and for a set of nobody
 */
export function takenLimits(visits: readonly InboxVisit[], sessionId: string): LimitsSet | null {
  const visit = visits.find(({ sets }) => sets.some(({ line }) => line.sessionId === sessionId));
  const own = visit?.sets.find(({ line }) => line.sessionId === sessionId);
  if (visit === undefined || own === undefined || visit.patient === '') return null;
  const { task, side } = own.line;
  const { plan, patient, startedAt } = visit;
  const candidates = visits
    .filter((other) => other.patient === patient && Date.parse(other.startedAt) <= Date.parse(startedAt))
    .flatMap((other) =>
      other.sets.flatMap(({ line, limitsSet }) => {
        if (limitsSet === null || line.sessionId === sessionId) return [];
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
