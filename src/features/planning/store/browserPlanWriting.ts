import { Problem } from '#core/problem';
import type { PlanRecord } from '#device/storage/keptSchemas';
import type { OpenedRepository } from '#device/storage/openRepository';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';
import { readPeople } from '#documents/practice/peopleNote';
import type { Notes } from '#shell/notes';
import { saveFile } from '#shell/saveFile';
import { draftNames, nothingKnown, type KnownPatient, type PlanWritingWorld } from './createPlanWriting';
import { readJson } from './practice';

/** The browser as plan writing needs it; where storage is blocked, a draft lasts as long as the page. */
export async function browserPlanWriting(
  notes: Notes,
  openRepository: () => Promise<OpenedRepository>,
): Promise<PlanWritingWorld> {
  // What was deleted since the page was opened stays deleted.
  await Promise.all(draftNames.map((name) => notes.readAnew(name).catch(() => null)));
  return {
    read: (name) => notes.read(name),
    write: (name, text) => notes.write(name, text),
    async keep(plan) {
      const { repository } = await openRepository();
      await repository.plans.save(plan.id, JSON.stringify(plan));
    },
    patients: () => readKnown(openRepository).catch(() => []),
    lastPlanOf: async (patient) => {
      try {
        const { repository } = await openRepository();
        return withoutTakenOut(latestOf(patient, (await repository.plans.list()).found), notes);
      } catch {
        return null; // Their plan is then begun from an empty one.
      }
    },
    async signOver(pseudonym, override) {
      const { repository } = await openRepository();
      const one = await repository.patients.named(pseudonym);
      if (one === null) throw new Problem('storage', `${pseudonym} is no longer kept on this device.`);
      await repository.patients.update(one.id, (patient) => ({
        ...patient,
        overrides: [...patient.overrides, override],
      }));
    },
    watchDeleted: (listener) =>
      void openRepository()
        .then(({ repository }) =>
          repository.subscribe((change) => {
            if (change.kind === 'patient-deleted') listener(change.patient);
          }),
        )
        .catch(() => undefined), // Where nothing can be opened, nothing is deleted.
    saveFile,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  };
}

/** A plan without the keys of colleagues who were taken out of the practice's list since. */
function withoutTakenOut(plan: PlanDocument | null, notes: Notes): PlanDocument | null {
  const gone = new Set(readPeople(notes.read('people'))?.takenOut.map(({ key }) => key));
  return plan && { ...plan, returnKeys: plan.returnKeys.filter((key) => !gone.has(key)) };
}

/** The latest of these plans that is for that patient and can be read; the last saved stands first. */
function latestOf(patient: string, records: readonly PlanRecord[]): PlanDocument | null {
  for (const { text } of records) {
    const kept = readJson(text) as { patient?: unknown } | null;
    if (kept?.patient !== patient) continue;
    try {
      return parsePlan(text);
    } catch {
      continue; // Of a later version, or damaged.
    }
  }
  return null;
}

/** Those with a record, and those to whom a plan was handed out. */
async function readKnown(openRepository: () => Promise<OpenedRepository>): Promise<readonly KnownPatient[]> {
  const { repository } = await openRepository();
  const [{ found: records }, { found: plans }] = await Promise.all([
    repository.patients.list(),
    repository.plans.list(),
  ]);
  const known = new Map<string, KnownPatient>();
  for (const { text } of plans) {
    const { patient } = (readJson(text) ?? {}) as { patient?: unknown };
    if (typeof patient === 'string') known.set(patient, { ...nothingKnown, pseudonym: patient });
  }
  for (const { pseudonym, painfulSide, prescribedRestrictions, overrides, thresholds } of records)
    known.set(pseudonym, {
      pseudonym,
      painfulSide,
      restrictions: prescribedRestrictions,
      overrides,
      thresholds,
    });
  return [...known.values()].sort((a, b) => a.pseudonym.localeCompare(b.pseudonym));
}
