import type { PlanDocument } from '#documents/plan/planDocument';
import { planSteps, type SetStep } from '#documents/plan/planSteps';
import { concernsOf } from '#documents/session/concernsOf';
import type { SessionDocument, SessionSet } from '#documents/session/sessionDocument';
import { unwanted } from '../guide/unwanted';

/** What is left of a session that was broken off today. */
export interface LeftToday {
  /** Sets that are done. */
  done: number;
  /** Sets of the whole plan. */
  of: number;
  /** What is left, in order; of a set that was begun, the repetitions that are missing. */
  steps: readonly SetStep[];
}

const reasons = Object.values(unwanted);

/**
 * What is left of a plan where its last session of today was broken off; null where none was, and where something was
 * said of the body that has to be seen first.
 *
 * @param sessions  newest first
 * @param isInterrupted  whether a session has a set whose recording was interrupted and not kept yet
 * @param counted  repetitions that were found in a recording; null where that is not known
 */
export function leftToday(
  sessions: readonly SessionDocument[],
  plan: Pick<PlanDocument, 'id' | 'items'>,
  isInterrupted: (sessionId: string) => boolean,
  counted: (recordingId: string) => number | null,
  now: Date,
): LeftToday | null {
  const broken = brokenToday(sessions, plan.id, now);
  const sets = broken.flatMap((session) => session.sets);
  const isBegun = sets.length > 0 || broken.some(({ id }) => isInterrupted(id));
  if (!isBegun || broken.some(isHeld)) return null;
  const all = planSteps(plan.items);
  const steps = all.flatMap((step) => leftOf(step, sets, counted));
  return steps.length === 0 ? null : { done: all.length - steps.length, of: all.length, steps };
}

/** Sessions of a plan today that were broken off, one after the other; the newest first. */
export function brokenToday(
  sessions: readonly SessionDocument[],
  planId: string,
  now: Date,
): readonly SessionDocument[] {
  const day = now.toDateString();
  const theirs = sessions.filter(
    (session) =>
      session.planId === planId &&
      session.silence === null &&
      new Date(session.startedAt).toDateString() === day,
  );
  const ended = theirs.findIndex(({ endedAt }) => endedAt !== null);
  return ended < 0 ? theirs : theirs.slice(0, ended);
}

function isHeld(session: SessionDocument): boolean {
  return session.endedBecause !== null || concernsOf(session).length > 0;
}

function leftOf(
  step: SetStep,
  sets: readonly SessionSet[],
  counted: (recordingId: string) => number | null,
): SetStep[] {
  const { item, itemIndex, side, number } = step;
  const parts = sets.filter((set) => set.item === itemIndex && set.side === side && set.number === number);
  if (parts.some(({ cutShort }) => cutShort === null || !reasons.includes(cutShort))) return [];
  if (item.kind === 'hold') return [step];
  const found = parts.map(({ sessionId: id }) => (id === null ? null : counted(id)) ?? 0);
  const repetitions = item.repetitions - found.reduce((sum, one) => sum + one, 0);
  return repetitions <= 0 ? [] : [{ ...step, item: { ...item, repetitions } }];
}
