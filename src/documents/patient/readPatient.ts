import { readDocument } from '../reading/readDocument';
import type { PatientDocument } from './patientDocument';
import { patientKind } from './patientKind';

/**
 * Reads a patient document from untrusted data.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readPatient(data: unknown): PatientDocument {
  return readDocument(data, patientKind);
}
