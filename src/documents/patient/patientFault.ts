import { handRanges } from '#core/criteria/handRanges';
import { thresholdFacts, thresholdIds } from '#core/programme/proposalThresholds';
import { plainName } from '../schema/plainName';
import type { PatientDocument } from './patientDocument';

/** What the schema can't check in a patient document; null where all is well. */
export function patientFault(patient: PatientDocument): string | null {
  const { pseudonym, marks, plans, repeats } = patient;
  if (plainName(pseudonym) !== pseudonym) return 'its pseudonym has characters that are not seen';
  if (new Set(marks.map(({ visitId }) => visitId)).size < marks.length) return 'a session is marked twice';
  if (new Set(plans.map(({ id }) => id)).size < plans.length) return 'it has the same plan twice';
  const entries = entriesOf(patient).map(({ id }) => id);
  if (new Set(entries).size < entries.length) return 'it has the same entry twice';
  if (repeats.some(({ first, second }) => first === second)) return 'a set is said to repeat itself';
  return caseFault(patient) ?? thresholdsFault(patient.thresholds);
}

function entriesOf(patient: PatientDocument): { id: string }[] {
  const { decisions, assessments, pauses, redFlags, prescribedRestrictions, overrides } = patient;
  return [
    ...decisions,
    ...assessments,
    ...pauses,
    ...redFlags,
    ...prescribedRestrictions,
    ...overrides,
    ...patient.questionnaires,
    ...patient.criteria,
  ];
}

function caseFault({ pauses, redFlags, ownEye, criteria, questionnaires }: PatientDocument): string | null {
  if (pauses.some(({ from, to }) => to !== null && to < from)) return 'a pause ends before it begins';
  for (const { asked, applied } of redFlags) {
    if (new Set(asked).size < asked.length) return 'a warning sign is asked about twice at one visit';
    if (new Set(applied).size < applied.length || applied.some((id) => !asked.includes(id)))
      return 'a warning sign applies that was not asked about';
  }
  for (const { answers } of questionnaires)
    if (new Set(answers.map(({ linkId }) => linkId)).size < answers.length)
      return 'a questionnaire has the same question twice';
  for (const { answers } of ownEye)
    if (new Set(answers.map(({ repetition }) => repetition)).size < answers.length)
      return 'a repetition is judged by eye twice at once';
  const wrong = criteria.find(({ measure, value }) => {
    const { min, max } = handRanges[measure];
    return value < min || value > max;
  });
  return wrong === undefined ? null : `its value for ${wrong.measure} is out of range`;
}

function thresholdsFault(thresholds: PatientDocument['thresholds']): string | null {
  const wrong = thresholdIds.find((id) => {
    const value = thresholds[id];
    const { min, max, isWhole } = thresholdFacts[id];
    return value !== undefined && (value < min || value > max || (isWhole && !Number.isInteger(value)));
  });
  return wrong === undefined ? null : `its threshold ${wrong} is out of range`;
}
