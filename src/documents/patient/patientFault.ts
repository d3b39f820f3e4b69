import { plainName } from '../schema/plainName';
import type { PatientDocument } from './patientDocument';

/** What the schema can't check in a patient document; null where all is well. */
export function patientFault({ pseudonym, marks, plans }: PatientDocument): string | null {
  if (plainName(pseudonym) !== pseudonym) return 'its pseudonym has characters that are not seen';
  if (new Set(marks.map(({ visitId }) => visitId)).size < marks.length) return 'a session is marked twice';
  if (new Set(plans.map(({ id }) => id)).size < plans.length) return 'a plan stands in it twice';
  return null;
}
