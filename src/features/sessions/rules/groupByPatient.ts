import type { InboxVisit } from './inboxVisit';

export interface PatientGroup {
  /** A pseudonym; empty for recordings that name nobody. */
  patient: string;
  /** Newest first. */
  visits: InboxVisit[];
}

/** Visits by patient: each one's newest first, and the patient with the newest visit first. */
export function groupByPatient(visits: readonly InboxVisit[]): PatientGroup[] {
  const sorted = [...visits].sort((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt));
  const byPatient = new Map<string, InboxVisit[]>();
  for (const visit of sorted) {
    const group = byPatient.get(visit.patient);
    if (group === undefined) byPatient.set(visit.patient, [visit]);
    else group.push(visit);
  }
  return [...byPatient].map(([patient, group]) => ({ patient, visits: group }));
}
