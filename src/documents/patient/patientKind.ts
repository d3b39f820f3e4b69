import { bySchema } from '../reading/bySchema';
import { savedFileWords, type DocumentKind } from '../reading/documentKind';
import { bringUpPatient } from './bringUpPatient';
import { patientSchema, patientVersion, type PatientDocument } from './patientDocument';
import { patientFault } from './patientFault';

/** How a patient document is read. */
export const patientKind: DocumentKind<PatientDocument> = {
  problem: 'session',
  format: 'overfoot-patient',
  version: patientVersion,
  bringUp: bringUpPatient,
  read: bySchema(patientSchema, patientFault),
  words: savedFileWords('patient document'),
};
