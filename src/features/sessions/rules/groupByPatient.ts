import type { ListedSession } from './listedSession';

export interface PatientGroup {
  /** A pseudonym; empty for recordings that name nobody. */
  patient: string;
  /** Those in which something is still open come first; otherwise the newest. */
  sessions: ListedSession[];
}

/** Sessions by patient, and the patients: where something said of the body is still open, first; then the newest first. */
export function groupByPatient(sessions: readonly ListedSession[]): PatientGroup[] {
  const sorted = [...sessions].sort(
    (a, b) => Number(b.isOpen) - Number(a.isOpen) || Date.parse(b.startedAt) - Date.parse(a.startedAt),
  );
  const byPatient = new Map<string, ListedSession[]>();
  for (const session of sorted) {
    const group = byPatient.get(session.patient);
    if (group === undefined) byPatient.set(session.patient, [session]);
    else group.push(session);
  }
  return [...byPatient].map(([patient, group]) => ({ patient, sessions: group }));
}
