import { patientVersion, type PatientDocument } from './patientDocument';

/** Of a patient for whom nothing of it was recorded. */
export const nothingRecorded: Pick<PatientDocument, 'thresholds' | 'decisions' | 'assessments' | 'repeats'> =
  {
    thresholds: {},
    decisions: [],
    assessments: [],
    repeats: [],
  };

/**
 * Migrates a patient document of an older version. Version 2 added thresholds, decisions on proposals, tests of function
 * and sets that were filmed again.
 */
export function bringUpPatient(older: object, version: number): object {
  return version === 1 ? { ...older, ...nothingRecorded, version: patientVersion } : older;
}
