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
  return {
    list,
    find: async (id) => findKept(records, 'patients', id, await reader()),
    async add(patient) {
      const readPatient = await reader();
      const { found } = await list();
      if (found.some(({ id, pseudonym }) => pseudonym === patient.pseudonym && id !== patient.id))
        throw storageProblem('changed');
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
      await records.apply([{ remove: 'patients', key: id }, ...digestsOf(id)]);
    },
  };
}
