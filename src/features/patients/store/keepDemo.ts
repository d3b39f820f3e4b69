import type { Repository } from '#device/storage/repository';
import { demoClinic, type DemoClinicParts } from '#documents/demo/demoClinic';
import type { Decision } from '#documents/patient/patientDocument';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { decisionOn } from '../rules/decisionOn';
import { changesPlan, itemProposals } from '../rules/proposals';
import type { PatientIndex } from './createPatientIndex';

/** The same invented clinic each time. */
export const demoSeed = 7;

/** Initials of the invented therapist. */
const signs = 'DC';
/** After so many sessions it was decided what to do next. */
const decidedAfter = [4, 8];
const dayMs = 24 * 3_600_000;

/**
 * Keeps the demo clinic, as if its sessions had come in and what the rules proposed had been decided on. Loaded twice
 * on one day, it is there once.
 *
 * @param sessionsOf  the kept sessions of a patient
 * @param onProgress  called before each session; what it returns is waited for
 * @throws StorageProblem  'changed' where somebody else is kept under one of its pseudonyms
 */
export async function keepDemo(
  { patients, plans, keepTogether }: Repository,
  parts: DemoClinicParts,
  sessionsOf: PatientIndex['sessionsOf'],
  onProgress: (done: number, total: number) => Promise<void> = () => Promise.resolve(),
): Promise<void> {
  const clinic = demoClinic(parts);
  const total = clinic.reduce((sum, { sessions }) => sum + sessions.length, 0);
  let done = 0;
  for (const { patient, plan, sessions } of clinic) {
    await patients.add(patient);
    await plans.save(plan.id, JSON.stringify(plan), plan.createdAt);
    for (const make of sessions) {
      await onProgress(done++, total);
      const { session, recordings } = make();
      await keepTogether(
        session,
        recordings.map((recording) => ({
          recording,
          visitId: session.id,
          fromVideo: 'impossible',
          video: null,
        })),
      );
    }
    const listed = await sessionsOf(patient.pseudonym);
    await patients.update(patient.id, (kept) => ({ ...kept, decisions: decisionsOn(plan, listed) }));
  }
}

/** What was proposed then was accepted, as far as it changes no plan. */
function decisionsOn(plan: PlanDocument, sessions: readonly ListedSession[]): Decision[] {
  const oldestFirst = [...sessions].sort((a, b) => Date.parse(a.startedAt) - Date.parse(b.startedAt));
  return decidedAfter.flatMap((count) => {
    const known = oldestFirst.slice(0, count);
    const at = new Date(Date.parse(known.at(-1)!.startedAt) + dayMs).toISOString();
    return itemProposals(plan, known, {})
      .filter((proposed) => !changesPlan(proposed))
      .map((proposed) => {
        const id = known.at(-1)!.id.replace(/^.{8}/, `0000000${proposed.index}`);
        return decisionOn(plan, proposed, { id, at, by: signs, answer: 'accepted', why: '' });
      });
  });
}
