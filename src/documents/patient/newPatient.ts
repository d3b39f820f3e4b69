import { plainName } from '../schema/plainName';
import { nothingRecorded } from './bringUpPatient';
import { patientVersion, type PatientDocument } from './patientDocument';

/** A patient of whom nothing is noted yet. */
export function newPatient(pseudonym: string, id: string, openedAt: string): PatientDocument {
  return {
    format: 'overfoot-patient',
    version: patientVersion,
    id,
    note: '',
    pseudonym: plainName(pseudonym),
    openedAt,
    changedAt: openedAt,
    painfulSide: null,
    since: null,
    sites: [],
    goals: '',
    painRule: null,
    restrictions: '',
    plans: [],
    marks: [],
    ...nothingRecorded,
  };
}
