import { thresholdFacts, thresholdIds } from '#core/programme/proposalThresholds';
import { plainName } from '../schema/plainName';
import type { PatientDocument } from './patientDocument';

/** What the schema can't check in a patient document; null where all is well. */
export function patientFault(patient: PatientDocument): string | null {
  const { pseudonym, marks, plans, decisions, assessments, repeats } = patient;
  if (plainName(pseudonym) !== pseudonym) return 'its pseudonym has characters that are not seen';
  if (new Set(marks.map(({ visitId }) => visitId)).size < marks.length) return 'a session is marked twice';
  if (new Set(plans.map(({ id }) => id)).size < plans.length) return 'it has the same plan twice';
  const entries = [...decisions, ...assessments].map(({ id }) => id);
  if (new Set(entries).size < entries.length) return 'it has the same entry twice';
  if (repeats.some(({ first, second }) => first === second)) return 'a set is said to repeat itself';
  return thresholdsFault(patient.thresholds);
}

function thresholdsFault(thresholds: PatientDocument['thresholds']): string | null {
  const wrong = thresholdIds.find((id) => {
    const value = thresholds[id];
    const { min, max, isWhole } = thresholdFacts[id];
    return value !== undefined && (value < min || value > max || (isWhole && !Number.isInteger(value)));
  });
  return wrong === undefined ? null : `its threshold ${wrong} is out of range`;
}
