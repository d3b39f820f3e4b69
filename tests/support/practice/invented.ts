import { newPatient } from '#documents/patient/newPatient';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { smallSession } from '../smallSession';

/** An invented patient's record. */
export function inventedPatient(pseudonym: string, change: Partial<PatientDocument> = {}): PatientDocument {
  return { ...newPatient(pseudonym, crypto.randomUUID(), '2026-02-01T04:05:06.000Z'), ...change };
}

/** An invented patient's session. */
export function inventedSession(patient: string, change: Partial<SessionDocument> = {}): SessionDocument {
  const sets = smallSession().sets.map((set) => ({ ...set, sessionId: null }));
  return { ...smallSession(), id: crypto.randomUUID(), patient, sets, ...change };
}
