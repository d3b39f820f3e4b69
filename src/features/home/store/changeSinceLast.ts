import type { Side } from '#core/protocol/side';
import type { Repository } from '#device/storage/repository';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { SessionDocument, SessionSet } from '#documents/session/sessionDocument';
import { sinceLast, type MeasuredSet, type SinceLast } from '../rules/sinceLast';

/** What changed by more than error since the last session of a plan. */
export interface ChangeSinceLast {
  change: SinceLast;
  side: Side;
  /** When that session was, ISO 8601. */
  earlierAt: string;
}

/**
 * The first set of a session that differs by more than error from the same set of the session before it; null where none
 * does. Sessions from before the plan was last changed are not compared.
 *
 * @param sessions  newest first
 */
export async function changeSinceLast(
  session: SessionDocument,
  sessions: readonly SessionDocument[],
  plan: Pick<PlanDocument, 'id' | 'createdAt'>,
  recordings: Pick<Repository['recordings'], 'findHead'>,
): Promise<ChangeSinceLast | null> {
  const earlier = sessions.find(
    ({ planId, startedAt, sets }) =>
      planId === plan.id && startedAt < session.startedAt && startedAt >= plan.createdAt && sets.length > 0,
  );
  if (earlier === undefined) return null;
  const measured = async (set: SessionSet): Promise<MeasuredSet | null> => {
    const found = set.sessionId === null ? null : await recordings.findHead(set.sessionId);
    // Its numbers are not final while its video waits to be measured.
    return found === null || found.facts.fromVideo === 'waiting' ? null : { set, recording: found.recording };
  };
  for (const set of session.sets) {
    const same = earlier.sets.find(
      (one) => one.item === set.item && one.side === set.side && one.number === set.number,
    );
    const [before, now] = same === undefined ? [] : [await measured(same), await measured(set)];
    const change = before && now ? sinceLast(before, now) : null;
    if (change !== null) return { change, side: set.side, earlierAt: earlier.startedAt };
  }
  return null;
}
