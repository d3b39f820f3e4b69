import { group } from 'd3-array';
import type { NotedConditions } from '#core/conditions/setConditions';
import type { RecordingFacts } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { cautionsOf } from '#documents/plan/cautions';
import { freePainLimit } from '#documents/plan/freeRecording';
import { notedConditions } from '#documents/plan/notedConditions';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';
import { plannedLimits } from '#documents/plan/plannedLimits';
import { planSteps } from '#documents/plan/planSteps';
import { concernsOf } from '#documents/session/concernsOf';
import { notAsked } from '#documents/session/notAsked';
import type { SessionDocument, SessionSet, Settlement } from '#documents/session/sessionDocument';
import { settlementOf } from '#documents/session/settlementOf';
import { unplannedSet } from '#documents/session/unplannedSet';
import type { ListedRecording, ListedSession, SetReading } from '../rules/listedSession';
import { withReopened } from '../rules/withReopened';
import type { UnreadableRecord } from './keptSessionsState';

/** Everything that is kept, with sets that are still to be read. */
export interface SessionListing {
  /** Newest first. */
  sessions: ListedSession[];
  unreadable: UnreadableRecord[];
  facts: ReadonlyMap<string, RecordingFacts>;
}

/**
 * Lists visits with their sets, and recordings that stand in no visit, each as one of a single set: nothing that is kept
 * is left out.
 *
 * @throws StorageProblem
 */
export async function listSessions({
  sessions,
  recordings,
  plans,
  patients,
}: Repository): Promise<SessionListing> {
  const [keptSessions, keptFacts, keptPlans, keptPatients] = await Promise.all([
    sessions.list(),
    recordings.list(),
    plans.list(),
    patients.list(),
  ]);
  const found = { sessions: keptSessions.found, facts: keptFacts.found, plans: keptPlans.found };
  const listing = buildListing(found);
  return {
    ...listing,
    sessions: [
      ...withReopened(
        listing.sessions,
        keptPatients.found.flatMap(({ log }) => log),
      ),
    ],
    unreadable: [
      ...keptSessions.unreadable.map((one) => ({ ...one, kind: 'visit' as const })),
      ...keptFacts.unreadable.map((one) => ({ ...one, kind: 'recording' as const })),
    ],
  };
}

/** What a listing is made of. */
export interface ListedRecords {
  sessions: readonly SessionDocument[];
  /** Newest first. */
  facts: readonly RecordingFacts[];
  plans: readonly { id: string; text: string }[];
}

/** The same from records that were read already. */
export function buildListing(found: ListedRecords): Omit<SessionListing, 'unreadable'> {
  const facts = new Map(found.facts.map((one) => [one.id, one]));
  const planById = new Map(found.plans.flatMap(({ id, text }) => withPlan(id, text)));
  const inSessions = new Set(
    found.sessions.flatMap(({ sets }) => sets.map(({ sessionId: recordingId }) => recordingId)),
  );
  // Oldest first, in the order of a session's sets.
  const loose = found.facts.filter(({ id }) => !inSessions.has(id)).reverse();
  const sessionIds = new Set(found.sessions.map(({ id }) => id));
  const byPatient = group(found.sessions, ({ patient }) => patient);
  const listed = found.sessions.map((session) => {
    const added = loose
      .filter(({ visitId: sessionId }) => sessionId === session.id)
      .map((facts) => unplannedSet(facts, 1));
    const settlement = settlementOf(session.id, byPatient.get(session.patient)!);
    return sessionOf({ ...session, sets: [...session.sets, ...added] }, settlement, planById, facts);
  });
  const alone = loose
    .filter(({ visitId: sessionId }) => sessionId === null || !sessionIds.has(sessionId))
    .map(recordingOf);
  return {
    sessions: [...listed, ...alone].sort((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt)),
    facts,
  };
}

function sessionOf(
  session: SessionDocument,
  settlement: Settlement | null,
  plans: ReadonlyMap<string, PlanDocument>,
  facts: ReadonlyMap<string, RecordingFacts>,
): ListedSession {
  const { format, version, planId, sets, ...said } = session;
  const plan = planId === null ? undefined : plans.get(planId);
  const planned = planId === null ? freePainLimit : plan === undefined ? null : cautionsOf(plan).painLimit;
  // Sessions from before this was asked are not held against what is asked now.
  const painLimit = said.painLimit === null ? null : Math.min(said.painLimit, planned ?? Infinity);
  return {
    kind: 'visit',
    ...said,
    painLimit: planned ?? said.painLimit,
    settlement,
    isOpen: settlement === null && concernsOf({ ...session, painLimit }).length > 0,
    plan: planId === null ? null : { id: planId, madeAt: plan?.createdAt ?? null },
    plannedSets: plan === undefined ? null : planSteps(plan.items).length,
    sets: sets.map((line) => setOf(line, plan, facts.get(line.sessionId ?? ''))),
  };
}

function recordingOf(facts: RecordingFacts): ListedSession {
  const { id, createdAt } = facts;
  const feeling = { painBefore: null, painAfter: null, effort: null, remark: '' };
  return {
    kind: 'recording',
    id,
    patient: '',
    startedAt: createdAt,
    endedAt: createdAt,
    ...feeling,
    ...notAsked,
    settlement: null,
    isOpen: false,
    plan: null,
    plannedSets: null,
    sets: [setOf(unplannedSet(facts, 1), undefined, facts)],
  };
}

function setOf(
  line: SessionSet,
  plan: PlanDocument | undefined,
  facts: RecordingFacts | undefined,
): ListedRecording {
  const reading: SetReading = { state: line.sessionId === null ? 'none' : 'reading' };
  const worked = facts === undefined ? line : { ...line, side: facts.side };
  const planned = plannedLimits(plan, line);
  return { line: worked, reading, planned, asked: askedOf(plan, line), limitsSet: facts?.limitsSet ?? null };
}

function askedOf(plan: PlanDocument | undefined, { item: place, task }: SessionSet): NotedConditions | null {
  const item = plan?.items[place];
  if (plan === undefined || item?.kind !== 'repetitions' || item.task !== task) return null;
  return notedConditions(item, plan);
}

function withPlan(id: string, text: string): [string, PlanDocument][] {
  try {
    return [[id, parsePlan(text)]];
  } catch {
    return []; // One of another version: its limit is not known here.
  }
}
