import type { PatientDocument, SessionMark } from './patientDocument';

/**
 * Two records of one patient as one: what was noted last counts, plans and looked-at sessions of both are kept.
 *
 * @param here  whose id stays
 */
export function mergePatients(here: PatientDocument, there: PatientDocument): PatientDocument {
  const isHereNewer = Date.parse(here.changedAt) >= Date.parse(there.changedAt);
  const { painfulSide, since, sites, goals, painRule, restrictions, changedAt } = isHereNewer ? here : there;
  const openedFirst = Date.parse(here.openedAt) <= Date.parse(there.openedAt) ? here : there;
  return {
    ...here,
    note: here.note === '' ? there.note : here.note,
    openedAt: openedFirst.openedAt,
    changedAt,
    painfulSide,
    since,
    sites,
    goals,
    painRule,
    restrictions,
    plans: withPlans(here, there.plans).plans,
    marks: there.marks.reduce(withMark, here.marks),
  };
}

/** The record with these plans among those given, the latest last; the same object where all of them are in it. */
export function withPlans(
  patient: PatientDocument,
  given: readonly PatientDocument['plans'][number][],
): PatientDocument {
  const known = new Set(patient.plans.map(({ id }) => id));
  const added = given.filter(({ id }) => !known.has(id));
  if (added.length === 0) return patient;
  const plans = [...patient.plans, ...added].sort((a, b) => Date.parse(a.givenAt) - Date.parse(b.givenAt));
  return { ...patient, plans };
}

/** What is settled stays settled; the same array where nothing changes. */
export function withMark(marks: readonly SessionMark[], mark: SessionMark): SessionMark[] {
  const before = marks.find(({ visitId }) => visitId === mark.visitId);
  if (before !== undefined && (before.state === 'settled' || before.state === mark.state))
    return marks as SessionMark[];
  return [...marks.filter((one) => one !== before), mark];
}
