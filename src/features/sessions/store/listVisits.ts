import type { InboxSet, InboxVisit, SetReading } from '../rules/inboxVisit';
import { freePainLimit } from '#documents/plan/freeRecording';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';
import { planSteps } from '#documents/plan/planSteps';
import type { Limits } from '#core/protocol/limits';
import type { VisitDocument, VisitSet } from '#documents/session/visitDocument';
import type { SessionFacts } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import type { UnreadableRecord } from './inboxState';

/** Everything that is kept, with sets that are still to be read. */
export interface ListedVisits {
  /** Newest first. */
  visits: InboxVisit[];
  unreadable: UnreadableRecord[];
  facts: ReadonlyMap<string, SessionFacts>;
}

/**
 * Lists visits with their sets, and recordings that stand in no visit, each as one of a single set: nothing that is kept
 * is left out.
 *
 * @throws StorageProblem
 */
export async function listVisits({ visits, sessions, plans }: Repository): Promise<ListedVisits> {
  const [keptVisits, keptFacts, keptPlans] = await Promise.all([
    visits.list(),
    sessions.list(),
    plans.list(),
  ]);
  const facts = new Map(keptFacts.found.map((one) => [one.id, one]));
  const planById = new Map(keptPlans.found.flatMap(({ id, text }) => withPlan(id, text)));
  const inVisits = new Set(keptVisits.found.flatMap(({ sets }) => sets.map(({ sessionId }) => sessionId)));
  // Oldest first, as the sets of a visit stand.
  const loose = keptFacts.found.filter(({ id }) => !inVisits.has(id)).reverse();
  const visitIds = new Set(keptVisits.found.map(({ id }) => id));
  const listed = keptVisits.found.map((visit) => {
    const added = loose.filter(({ visitId }) => visitId === visit.id).map(lineOf);
    return visitOf({ ...visit, sets: [...visit.sets, ...added] }, planById, facts);
  });
  const alone = loose.filter(({ visitId }) => visitId === null || !visitIds.has(visitId)).map(recordingOf);
  return {
    visits: [...listed, ...alone].sort((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt)),
    unreadable: [
      ...keptVisits.unreadable.map((one) => ({ ...one, kind: 'visit' as const })),
      ...keptFacts.unreadable.map((one) => ({ ...one, kind: 'recording' as const })),
    ],
    facts,
  };
}

function visitOf(
  { id, patient, startedAt, endedAt, painBefore, painAfter, effort, remark, planId, sets }: VisitDocument,
  plans: ReadonlyMap<string, PlanDocument>,
  facts: ReadonlyMap<string, SessionFacts>,
): InboxVisit {
  const plan = planId === null ? undefined : plans.get(planId);
  return {
    ...{ kind: 'visit', id, patient, startedAt, endedAt, painBefore, painAfter, effort, remark },
    painLimit: planId === null ? freePainLimit : (plan?.painLimit ?? null),
    plan: planId === null ? null : { id: planId, madeAt: plan?.createdAt ?? null },
    plannedSets: plan === undefined ? null : planSteps(plan.items).length,
    sets: sets.map((line) => {
      const item = plan?.items[line.item];
      const planned = item?.kind === 'repetitions' && item.task === line.task ? item.limits : null;
      return setOf(line, planned, facts.get(line.sessionId ?? ''));
    }),
  };
}

function recordingOf(facts: SessionFacts): InboxVisit {
  const { id, createdAt } = facts;
  const feeling = { painBefore: null, painAfter: null, effort: null, remark: '' };
  return {
    ...{ kind: 'recording', id, patient: '', startedAt: createdAt, endedAt: createdAt, ...feeling },
    ...{ painLimit: null, plan: null, plannedSets: null },
    sets: [setOf(lineOf(facts), null, facts)],
  };
}

function setOf(line: VisitSet, planned: Limits | null, facts: SessionFacts | undefined): InboxSet {
  const reading: SetReading = { state: line.sessionId === null ? 'none' : 'reading' };
  return { line, reading, planned, limitsSet: facts?.limitsSet ?? null };
}

/** What a visit's line would say of a session that stands in none. */
function lineOf({ id, task, side }: SessionFacts): VisitSet {
  const unknown = { prescribedRepetitions: null, painDuring: null, cutShort: null, heldMs: null };
  return { sessionId: id, item: 0, task, side, number: 1, ...unknown };
}

function withPlan(id: string, text: string): [string, PlanDocument][] {
  try {
    return [[id, parsePlan(text)]];
  } catch {
    return []; // One of another version: its limit is not known here.
  }
}
