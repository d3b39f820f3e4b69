import type { Sureness } from '#core/chance/grade';
import { createQueue } from '#core/createQueue';
import { measuringVersion } from '#core/measurement/measurement';
import type { ChangedRecord } from '#device/storage/createDigests';
import { ensurePatient } from '#device/storage/ensurePatient';
import type { OpenedRepository } from '#device/storage/openRepository';
import type { Repository } from '#device/storage/repository';
import { withPlans } from '#documents/patient/mergePatients';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { reopeningsOf } from '#documents/patient/reopeningsOf';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { withReopened } from '#features/sessions/rules/withReopened';
import { buildOverview, type PatientOverview } from '../rules/overview';
import { findOutdated } from './findOutdated';
import type { IndexedPatients } from './indexedPatients';
import { readChanges, type Changes } from './readChanges';
import { readPatientSessions, type PatientCourse } from './readPatientSessions';

/** Bumped when what digests hold changes. */
const digestVersion = 2;

export interface PatientIndexWorld {
  openRepository: () => Promise<OpenedRepository>;
  /** How sure it has to be before a side is named. */
  sureness: () => Sureness;
  newId(): string;
  now(): Date;
}

/** What is worked out from the sessions of each patient, kept so that it need not be worked out again. */
export interface PatientIndex {
  /** At once, as it was last worked out. */
  list(): Promise<IndexedPatients>;
  /**
   * Brings it up to date, one patient after another.
   *
   * @param onProgress  called with the number of patients done
   * @returns  whether anything was out of date
   */
  refresh(onProgress?: (done: number, total: number) => void, signal?: AbortSignal): Promise<boolean>;
  /** The sessions of a patient as they are now, newest first. */
  sessionsOf(pseudonym: string): Promise<readonly ListedSession[]>;
  /** What was worked out last, without looking whether it is out of date; null where there is nothing. */
  knownSessionsOf(patientId: string): Promise<readonly ListedSession[] | null>;
}

export function createPatientIndex({
  openRepository,
  sureness,
  newId,
  now,
}: PatientIndexWorld): PatientIndex {
  /** One patient at a time, so that a page need not wait for all of them; and one bringing up to date after the other. */
  const work = createQueue();
  const refreshes = createQueue();
  const madeAs = () => `${digestVersion} ${measuringVersion} ${sureness()}`;
  const repository = async () => (await openRepository()).repository;
  /** By pseudonym, as last listed: to find one without reading all. */
  const ids = new Map<string, string>();

  const list = async (): Promise<IndexedPatients> => {
    const { patients, digests } = await repository();
    const [listed, overviews] = await Promise.all([patients.list(), digests.overviews()]);
    for (const { pseudonym, id } of listed.found) ids.set(pseudonym, id);
    const byId = new Map(
      overviews.flatMap(({ patientId, value }) => (isOverview(value) ? [[patientId, value] as const] : [])),
    );
    for (const patient of listed.found) await openAgain(patient, byId);
    return { patients: listed.found, overviews: byId };
  };
  /** Shows what was opened again in the record, which no digest holds. */
  const openAgain = async ({ id, log }: PatientDocument, overviews: Map<string, PatientOverview>) => {
    const overview = overviews.get(id);
    const reopened = reopeningsOf(log);
    if (overview === undefined || !overview.sessions.some((session) => reopened.has(session.id))) return;
    const course = withReopened((await courseOf(await repository(), id))?.sessions ?? [], log);
    const isOpen = new Map(course.map((session) => [session.id, session.isOpen]));
    const sessions = overview.sessions.map((one) => ({ ...one, isOpen: isOpen.get(one.id) ?? one.isOpen }));
    overviews.set(id, { ...overview, sessions });
  };
  const courseOf = async (kept: Repository, patientId: string): Promise<PatientCourse | null> => {
    const course = (await kept.digests.course(patientId)) as PatientCourse | undefined;
    return course?.madeAs === madeAs() ? course : null;
  };
  /** What is known of a patient while nothing at all has changed; null where more has to be read. */
  const currentCourseOf = async (kept: Repository, pseudonym: string): Promise<PatientCourse | null> => {
    const id = ids.get(pseudonym);
    if (id === undefined) return null;
    const [patient, course] = await Promise.all([kept.patients.find(id), courseOf(kept, id)]);
    return patient?.pseudonym === pseudonym ? course : null;
  };
  const ensure = async (kept: Repository, pseudonym: string, known: IndexedPatients) => {
    const patient = known.patients.find((one) => one.pseudonym === pseudonym);
    if (patient !== undefined) return patient;
    const added = await ensurePatient(kept, pseudonym, { newId, now });
    known.patients.push(added);
    ids.set(pseudonym, added.id);
    return added;
  };
  const workOut = async (
    kept: Repository,
    pseudonym: string,
    sessionIds: ReadonlySet<string>,
    known: IndexedPatients,
    changes: Changes,
  ) => {
    const patient = await ensure(kept, pseudonym, known);
    const before = await courseOf(kept, patient.id);
    const found = await readPatientSessions(kept, patient, {
      before,
      sessionIds,
      changes,
      sureness: sureness(),
      madeAs: madeAs(),
    });
    await kept.patients.update(patient.id, (one) => withPlans(one, found.plansGiven));
    const overview = buildOverview(found.course.sessions, found.inForce, madeAs());
    await kept.digests.save([{ patientId: patient.id, overview, course: found.course }], found.settled);
    return found;
  };

  return {
    list,
    refresh: (onProgress, signal) =>
      refreshes.add(async () => {
        const kept = await repository();
        const [known, changed, builtAs] = await Promise.all([
          list(),
          kept.digests.changed(),
          kept.digests.builtAs(),
        ]);
        const isBuilt = builtAs === madeAs();
        if (isBuilt && changed.length === 0) return false;
        const changes = await readChanges(kept, changed);
        const outdated = await findOutdated(kept, known, changes, isBuilt ? null : madeAs());
        let done = 0;
        const settled = new Set<ChangedRecord>();
        for (const [pseudonym, sessionIds] of outdated) {
          if (signal?.aborted === true) return true;
          onProgress?.(done++, outdated.size);
          const found = await work.add(() => workOut(kept, pseudonym, sessionIds, known, changes));
          for (const one of found.settled) settled.add(one);
        }
        // What is left belongs to nobody, such as recordings without a patient.
        await kept.digests.save(
          [],
          changed.filter((one) => !settled.has(one)),
        );
        if (!isBuilt) await kept.digests.setBuiltAs(madeAs());
        return true;
      }),
    sessionsOf: (pseudonym) =>
      work.add(async () => {
        const kept = await repository();
        const now = async (sessions: readonly ListedSession[]) =>
          withReopened(sessions, (await kept.patients.named(pseudonym))?.log ?? []);
        const changed = await kept.digests.changed();
        const current = changed.length === 0 ? await currentCourseOf(kept, pseudonym) : null;
        if (current !== null) return now(current.sessions);
        const known = await list();
        const patient = known.patients.find((one) => one.pseudonym === pseudonym);
        const course = patient === undefined ? null : await courseOf(kept, patient.id);
        const madeNow = course === null ? madeAs() : null;
        const changes = await readChanges(kept, changed);
        const outdated = await findOutdated(kept, known, changes, madeNow);
        const sessionIds = outdated.get(pseudonym);
        if (course !== null && sessionIds === undefined) return now(course.sessions);
        const found = await workOut(kept, pseudonym, sessionIds ?? new Set(), known, changes);
        return now(found.course.sessions);
      }),
    async knownSessionsOf(patientId) {
      const kept = await repository();
      const course = await courseOf(kept, patientId);
      return course && withReopened(course.sessions, (await kept.patients.find(patientId))?.log ?? []);
    },
  };
}

/** Trusted in its parts: nothing but this program writes it, with a checksum. */
function isOverview(value: unknown): value is PatientOverview {
  return typeof value === 'object' && value !== null && 'madeAs' in value && 'sessions' in value;
}
