import { greatest } from 'd3-array';
import type { Sureness } from '#core/chance/grade';
import type { ChangedRecord } from '#device/storage/createDigests';
import type { RecordingFacts } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import type { ListedSession, SetReading } from '#features/sessions/rules/listedSession';
import { takenLimits } from '#features/sessions/rules/takenLimits';
import { buildListing } from '#features/sessions/store/listSessions';
import { loadSet } from '#features/sessions/store/loadSet';
import { planOfText } from './planOfText';
import type { Changes } from './readChanges';

/** All that a patient's page shows, as it is kept. */
export interface PatientCourse {
  /** How it was worked out; of another make, it is out of date. */
  madeAs: string;
  /** Newest first. */
  sessions: ListedSession[];
  /** By recording: what its reading was made with. */
  readAs: Record<string, string>;
}

interface Asked {
  /** What was worked out before, of the same make; null without. */
  before: PatientCourse | null;
  /** Sessions that may be the patient's. */
  sessionIds: ReadonlySet<string>;
  changes: Changes;
  sureness: Sureness;
  madeAs: string;
}

interface Found {
  course: PatientCourse;
  plansGiven: PatientDocument['plans'];
  /** The latest of them. */
  inForce: PlanDocument | null;
  /** The changes that it takes in. */
  settled: ChangedRecord[];
}

/** Reads the sessions of one patient, and of their sets those that are not known yet or changed. */
export async function readPatientSessions(
  kept: Repository,
  patient: PatientDocument,
  { before, sessionIds, changes, sureness, madeAs }: Asked,
): Promise<Found> {
  const sessions = await readSessions(kept, patient.pseudonym, sessionIds);
  const facts = await readFacts(kept, sessions, before, changes);
  const planIds = new Set([
    ...sessions.flatMap(({ planId }) => (planId === null ? [] : [planId])),
    ...patient.plans.map(({ id }) => id),
    ...(changes.plansOf.get(patient.pseudonym) ?? []),
  ]);
  const texts = await Promise.all(
    [...planIds].map(async (id) => ({ id, text: await kept.plans.find(id).catch(() => null) })),
  );
  const plans = texts.flatMap(({ id, text }) => (text === null ? [] : [{ id, text }]));
  const listed = buildListing({ sessions, facts, plans }).sessions.filter(
    (session) => session.patient === patient.pseudonym,
  );
  const isChanged = (id: string) => changes.byId.get(id)?.some(({ kind }) => kind === 'recording') === true;
  const fromVideo = new Map(facts.map((one) => [one.id, one.fromVideo]));
  const known = readingsOf(before);
  const readAs: Record<string, string> = {};
  const read = async (id: string): Promise<SetReading> => {
    const taken = takenLimits(listed, id);
    readAs[id] = `${fromVideo.get(id) ?? 'impossible'} ${taken?.at ?? ''}`;
    const reading = known.get(id);
    const isKnown = reading?.state === 'read' && before?.readAs[id] === readAs[id] && !isChanged(id);
    return isKnown ? reading : loadSet(id, taken, sureness, kept);
  };
  // All at once, since the database answers many questions in little more time than one.
  await Promise.all(
    listed.map(async (session) => {
      session.sets = await Promise.all(session.sets.map(withReading(read)));
    }),
  );

  const ids = new Set([...sessions.map(({ id }) => id), ...facts.map(({ id }) => id)]);
  const theirs = plans.flatMap(({ text }) => {
    const plan = planOfText(text);
    return plan?.patient === patient.pseudonym ? [plan] : [];
  });
  const given = theirs.map(({ id, createdAt }) => ({ id, givenAt: createdAt }));
  for (const { id } of given) ids.add(id);
  return {
    course: { madeAs, sessions: listed, readAs },
    plansGiven: given,
    inForce: greatest(theirs, ({ createdAt }) => Date.parse(createdAt)) ?? null,
    settled: [...ids].flatMap((id) => changes.byId.get(id) ?? []),
  };
}

function withReading(read: (id: string) => Promise<SetReading>) {
  return async (set: ListedSession['sets'][number]) =>
    set.line.sessionId === null ? set : { ...set, reading: await read(set.line.sessionId) };
}

async function readSessions(
  kept: Repository,
  pseudonym: string,
  ids: ReadonlySet<string>,
): Promise<SessionDocument[]> {
  // One that can't be read is listed among all kept sessions, with why.
  const found = await Promise.all([...ids].map((id) => kept.sessions.find(id).catch(() => null)));
  return found.filter((session) => session?.patient === pseudonym) as SessionDocument[];
}

/** Of all recordings of the sessions, those included that no line of theirs names. */
async function readFacts(
  kept: Repository,
  sessions: readonly SessionDocument[],
  before: PatientCourse | null,
  { recordingsOf }: Changes,
): Promise<RecordingFacts[]> {
  const named = sessions.flatMap(({ sets }) => sets.map(({ sessionId }) => sessionId));
  const changed = sessions.flatMap(({ id }) => (recordingsOf.get(id) ?? []).map((facts) => facts.id));
  const ids = new Set([...named, ...readingsOf(before).keys(), ...changed]);
  const isOurs = new Set(sessions.map(({ id }) => id));
  const isNamed = new Set(named);
  const found = await kept.recordings.facts([...ids].filter((id) => id !== null));
  return found
    .filter(({ id, visitId }) => isNamed.has(id) || (visitId !== null && isOurs.has(visitId)))
    .sort((a, b) => Date.parse(b.createdAt) - Date.parse(a.createdAt));
}

function readingsOf(course: PatientCourse | null): Map<string, SetReading> {
  const sets = course?.sessions.flatMap((session) => session.sets) ?? [];
  return new Map(
    sets.flatMap(({ line: { sessionId: id }, reading }) => (id === null ? [] : [[id, reading] as const])),
  );
}
