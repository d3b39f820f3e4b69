import { newPatient } from '#documents/patient/newPatient';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { Repository } from './repository';

/**
 * The record of the patient with this pseudonym, who is added where there is none.
 *
 * @throws StorageProblem  where it can't be read or added
 */
export async function ensurePatient(
  { patients }: Pick<Repository, 'patients'>,
  pseudonym: string,
  { newId, now }: { newId(): string; now(): Date },
): Promise<PatientDocument> {
  const kept = await patients.named(pseudonym);
  if (kept !== null) return kept;
  const added = newPatient(pseudonym, newId(), now().toISOString());
  try {
    await patients.add(added);
    return added;
  } catch (error) {
    // Added meanwhile, by hand or in another tab.
    const theirs = await patients.named(pseudonym);
    if (theirs === null) throw error;
    return theirs;
  }
}
