import type { ListedSession } from './listedSession';

export interface PatientGroup {
  /** A pseudonym; empty for recordings that name nobody. */
  patient: string;
  /** Newest first. */
  sessions: ListedSession[];
}

/** Sessions by patient: each patient's newest first, and the patient with the newest session first. */
export function groupByPatient(sessions: readonly ListedSession[]): PatientGroup[] {
  const sorted = [...sessions].sort((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt));
  const byPatient = new Map<string, ListedSession[]>();
  for (const session of sorted) {
    const group = byPatient.get(session.patient);
    if (group === undefined) byPatient.set(session.patient, [session]);
    else group.push(session);
  }
  return [...byPatient].map(([patient, group]) => ({ patient, sessions: group }));
}
