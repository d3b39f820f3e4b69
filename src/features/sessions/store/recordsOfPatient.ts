import type { Repository } from '#device/storage/repository';
import type { NoteName } from '#shell/notes';
import type { Removable } from './keptSessionsState';

/** Notes in which a patient can be named. */
const noteNames: readonly NoteName[] = ['draft', 'last-plan'];

/** Everything that is kept of a patient: the record, sessions with their sets and videos, plans, drafts, interrupted sets. */
export async function recordsOfPatient(kept: Repository, patient: string): Promise<Removable[]> {
  const sessions = (await kept.sessions.list()).found.filter((session) => session.patient === patient);
  const plans = (await kept.plans.list()).found.filter(({ text }) => patientOf(text) === patient);
  const interrupted = (await kept.interrupted()).found.filter(({ start }) =>
    sessions.some(({ id }) => id === start.visitId),
  );
  const records = (await kept.patients.list()).found.filter(({ pseudonym }) => pseudonym === patient);
  const notes = await kept.notes.read();
  const named = noteNames.filter((name) => patientOf(notes.get(name)) === patient);
  return [
    ...sessions.map(({ id }) => ({ id, kind: 'visit' as const })),
    ...records.map(({ id }) => ({ id, kind: 'patient' as const })),
    ...plans.map(({ id }) => ({ id, kind: 'plan' as const })),
    ...interrupted.map(({ start: { id } }) => ({ id, kind: 'interrupted' as const })),
    ...named.map((id) => ({ id, kind: 'note' as const })),
  ];
}

/** The pseudonym in a plan or a draft of one, of whatever version; null where there is none. */
function patientOf(text: string | undefined): string | null {
  try {
    const { patient } = JSON.parse(text ?? 'null') as { patient?: unknown };
    return typeof patient === 'string' ? patient : null;
  } catch {
    return null;
  }
}
