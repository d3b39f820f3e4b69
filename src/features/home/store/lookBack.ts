import type { PlanDocument } from '#documents/plan/planDocument';
import { concernsOf } from '#documents/session/concernsOf';
import type { SessionCheck, SessionDocument } from '#documents/session/sessionDocument';
import { settlementOf } from '#documents/session/settlementOf';
import { isSameDay } from '../rules/isSameDay';
import type { EarlierSession } from './homeState';

/** What earlier sessions mean for the next one. */
export interface LookBack {
  /** Those in which something was said of the body that nobody has settled yet, the newest first. */
  earlier: readonly EarlierSession[];
  /** All warning signs are asked for the first time that a plan is followed on this device. */
  asked: SessionCheck['asked'];
  /** The last session in which something was done, before today, where nobody answered how the knee was after it. */
  askedAfter: string | null;
}

/**
 * Looks at the sessions of the same plan or patient; without a plan, at those without one.
 *
 * @param sessions  all of them, newest first
 */
export function lookBack(
  plan: Pick<PlanDocument, 'id' | 'patient'> | null,
  sessions: readonly SessionDocument[],
  now: Date,
): LookBack {
  const theirs = sessions.filter(({ planId, patient }) =>
    plan === null ? planId === null : planId === plan.id || patient === plan.patient,
  );
  const earlier = theirs.flatMap((session) => {
    const { id, startedAt } = session;
    const concerns = settlementOf(id, theirs) === null ? concernsOf(session) : [];
    return concerns.length === 0 ? [] : [{ id, startedAt, concerns }];
  });
  return {
    earlier,
    asked: wasFollowed(plan?.id ?? null, theirs) ? 'new' : 'all',
    askedAfter: askedAfter(theirs, now),
  };
}

/** Whether the warning signs were asked for in a session of this plan. */
export function wasFollowed(planId: string | null, sessions: readonly SessionDocument[]): boolean {
  return sessions.some((session) => session.planId === planId && session.check !== null);
}

/** What was done today is asked about tomorrow. */
function askedAfter(sessions: readonly SessionDocument[], now: Date): string | null {
  const last = sessions.find(({ sets }) => sets.length > 0);
  if (last === undefined || isSameDay(new Date(last.startedAt), now)) return null;
  return sessions.some(({ afterLast }) => afterLast?.visitId === last.id && afterLast.worst !== null)
    ? null
    : last.id;
}
