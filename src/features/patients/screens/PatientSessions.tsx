import { useKeptSessions, useKeptSessionsState } from '#features/sessions/keptSessionsContext';
import { shortFinding } from '#features/sessions/rules/findingWords';
import { findNeeds } from '#features/sessions/rules/findNeeds';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { countedSets } from '#features/sessions/screens/sessionWords';
import { momentWords } from '#words/dateWords';
import { usePatientsState } from '../patientsContext';
import { stateOf } from '../rules/listPatients';

const mostNeeds = 2;

/** All sessions of the patient, newest first: new, viewed or settled. */
export function PatientSessions({ sessions }: { sessions: readonly ListedSession[] }) {
  const keptSessions = useKeptSessions();
  const selected = useKeptSessionsState((state) => state.selected);
  const marks = usePatientsState((state) => state.patient?.marks) ?? [];
  return (
    <section className="card patient-sessions" aria-labelledby="patient-sessions-title">
      <h2 id="patient-sessions-title" tabIndex={-1}>
        Sessions
      </h2>
      {sessions.length === 0 && <p className="soft">None yet.</p>}
      <ul>
        {sessions.map((session) => {
          const state = stateOf(marks, session);
          return (
            <li key={session.id}>
              <button
                type="button"
                className="patient-session"
                aria-pressed={session.id === selected}
                onClick={() => keptSessions.select(session.id)}
              >
                <strong className="number">{momentWords(session.startedAt)}</strong>
                <span className={`patient-state patient-state-${state} small`}>{state}</span>
                <span className="small soft">{countedSets(session)}</span>
                <span className="small patient-session-needs">
                  {findNeeds(session).slice(0, mostNeeds).map(shortFinding).join(' · ')}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
