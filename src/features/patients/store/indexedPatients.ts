import type { PatientDocument } from '#documents/patient/patientDocument';
import type { PatientOverview } from '../rules/overview';

/** Everybody who is kept here, as last worked out. */
export interface IndexedPatients {
  patients: PatientDocument[];
  /** By the patient's id. */
  overviews: ReadonlyMap<string, PatientOverview>;
}
