import type { PatientDocument } from '#documents/patient/patientDocument';

/** The lists of which a mistake can be taken out. */
export type KeptList =
  'assessments' | 'pauses' | 'redFlags' | 'prescribedRestrictions' | 'questionnaires' | 'criteria';

/** The record with one entry taken out: it stays, with who said so and when. */
export function takeOut(
  patient: PatientDocument,
  list: KeptList,
  id: string,
  withdrawn: { at: string; by: string },
): PatientDocument {
  return { ...patient, [list]: patient[list].map((one) => (one.id === id ? { ...one, withdrawn } : one)) };
}
