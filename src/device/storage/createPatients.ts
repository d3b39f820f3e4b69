import { keepsLog } from '#documents/patient/logEntry';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { digestsOf } from './createDigests';
import { findKept, listKept } from './parseKept';
import type { Records } from './records';
import type { Repository } from './repository';
import { StorageProblem, storageProblem } from './storageProblem';

/** Their reader is large, and nothing that is shown first needs it. */
const reader = async () => (await import('#documents/patient/readPatient')).readPatient;

/** Tabs that change one patient at once are few. */
const mostAttempts = 5;

/** The records of patients. */
export function createPatients(records: Records): Repository['patients'] {
  const list = async () => listKept(records, 'patients', await reader());
  const updateOnce = async (
    id: string,
    change: (patient: PatientDocument) => PatientDocument,
  ): Promise<PatientDocument | null> => {
    const readPatient = await reader();
    const kept = await records.find('patients', id);
    if (kept === null) return null;
    const before = readPatient(kept.value);
    const after = change(before);
    if (after === before) return before;
    if (!keepsLog(before.log, after.log))
      throw new Error('Entries of who did what are never changed or removed.');
    const { edition: expects } = kept;
    await records.apply([{ replace: 'patients', key: id, value: readPatient(after), expects }]);
    return after;
  };
  const find = async (id: string) => findKept(records, 'patients', id, await reader());
  /** Where each was found last, by pseudonym: what can be wrong by now, and is looked at again. */
  const ids = new Map<string, string>();
  const named = async (pseudonym: string): Promise<PatientDocument | null> => {
    const id = ids.get(pseudonym);
    const known = id === undefined ? null : await find(id).catch(() => null);
    if (known?.pseudonym === pseudonym) return known;
    ids.clear();
    const { found } = await list();
    for (const one of found) ids.set(one.pseudonym, one.id);
    return found.find((one) => one.pseudonym === pseudonym) ?? null;
  };
  return {
    list,
    find,
    named,
    async add(patient) {
      const readPatient = await reader();
      const namesake = await named(patient.pseudonym);
      if (namesake !== null && namesake.id !== patient.id) throw storageProblem('changed');
      await records.apply([{ put: 'patients', key: patient.id, value: readPatient(patient) }]);
    },
    async update(id, change) {
      for (let attempt = 1; ; attempt++) {
        try {
          return await updateOnce(id, change);
        } catch (error) {
          const isRetried = error instanceof StorageProblem && error.reason === 'changed';
          if (!isRetried || attempt === mostAttempts) throw error;
        }
      }
    },
    async remove(id) {
      ids.clear();
      await records.apply([{ remove: 'patients', key: id }, ...digestsOf(id)]);
    },
  };
}
