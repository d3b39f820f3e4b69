import { max } from 'd3-array';
import { calendarDay } from '#core/calendarDay';
import { appliesAtHome } from '#core/programme/nextStep';
import { thresholdsOf } from '#core/programme/proposalThresholds';
import { propose } from '#core/programme/propose';
import { upToOf } from '#documents/plan/itemProgress';
import type { PlanDocument, PlanItem, RepetitionItem } from '#documents/plan/planDocument';
import { stageCourseOf, type StagedSession } from '#documents/programme/stageCourseOf';
import type { SessionDocument } from '#documents/session/sessionDocument';

/** What this device changed of an item by itself, as the plan allows it. */
export type StepAtHome = { item: PlanItem } & (
  | { kind: 'more'; from: number; to: number }
  /** The same again, after a day of rest; `restToday` where that day is not over. */
  | { kind: 'repeat'; repetitions: number; restToday: boolean }
);

/**
 * A plan's items with the repetitions that they have come to at home: never fewer than the plan says, never more than
 * it allows. Where the plan does not let the device change anything, as the plan says.
 *
 * @param sessions  newest first
 */
export function itemsNow(
  { id, items, autoStep }: Pick<PlanDocument, 'id' | 'items' | 'autoStep'>,
  sessions: readonly SessionDocument[],
): PlanItem[] {
  if (autoStep !== 'within-plan') return [...items];
  const theirs = sessions.filter(({ planId }) => planId === id);
  return items.map((item, index) => {
    const most = item.kind === 'repetitions' ? (upToOf(item)?.max ?? null) : null;
    if (item.kind !== 'repetitions' || most === null) return item;
    const asked = theirs
      .map(({ sets }) =>
        max(
          sets.filter((set) => set.item === index && set.task === item.task),
          ({ prescribedRepetitions }) => prescribedRepetitions,
        ),
      )
      .find((one) => one !== undefined && one !== null);
    return withRepetitions(item, Math.max(item.repetitions, Math.min(asked ?? 0, most)));
  });
}

/**
 * What the device changes for the session that begins: more repetitions, or the same after a day of rest, and nothing
 * else. The rules draw their lines where the plan says, else where they usually do.
 *
 * @param sessions  of this plan, with the one that begins, in any order
 * @param now  its items as they stand: `itemsNow`
 */
export function stepAtHome(
  plan: PlanDocument,
  now: readonly PlanItem[],
  sessions: readonly StagedSession[],
  today: Date,
): { items: PlanItem[]; steps: StepAtHome[] } {
  const steps: StepAtHome[] = [];
  const items = now.map((item): PlanItem => {
    const bounds = item.kind === 'repetitions' ? upToOf(item) : null;
    if (item.kind !== 'repetitions' || bounds === null) return item;
    const course = stageCourseOf(plan, item, sessions);
    if (course.sessions.length === 0) return item;
    const proposal = propose(course, thresholdsOf(plan.thresholds));
    if (!appliesAtHome(proposal, plan.autoStep)) return item;
    if (proposal.proposal === 'repeat') {
      const restToday = calendarDay(today.getTime()) - course.sessions.at(-1)!.day < 2;
      steps.push({ kind: 'repeat', item, repetitions: item.repetitions, restToday });
      return item;
    }
    const to = Math.min(proposal.repetitions ?? 0, bounds.max);
    if (to <= item.repetitions) return item;
    steps.push({ kind: 'more', item, from: item.repetitions, to });
    return withRepetitions(item, to);
  });
  return { items, steps };
}

function withRepetitions(item: RepetitionItem, repetitions: number): RepetitionItem {
  return repetitions === item.repetitions ? item : { ...item, repetitions };
}
