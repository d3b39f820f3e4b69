import { Button } from 'react-aria-components';
import { useKeptSessions } from '#features/sessions/keptSessionsContext';
import { findingSentence } from '#features/sessions/rules/findingWords';
import { findNeeds } from '#features/sessions/rules/findNeeds';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { dayWords } from '#words/dateWords';
import { usePatientsState } from '../patientsContext';
import { stateOf } from '../rules/listPatients';

/** The sessions that are read out; the others stand in the list. */
const mostSessions = 3;

/** What needs a look in sessions that nobody has settled. */
export function PatientNeeds({ sessions }: { sessions: readonly ListedSession[] }) {
  const keptSessions = useKeptSessions();
  const marks = usePatientsState((state) => state.patient?.marks) ?? [];
  const needy = sessions
    .filter((session) => stateOf(marks, session) !== 'settled')
    .map((session) => ({ session, needs: findNeeds(session).filter(({ kind }) => kind !== 'settled') }))
    .filter(({ session, needs }) => needs.length > 0 || session.remark !== '')
    .sort((a, b) => Number(b.session.isOpen) - Number(a.session.isOpen));
  if (needy.length === 0) return null;
  return (
    <section className="sessions-needs" aria-labelledby="patient-needs-title">
      <h2 id="patient-needs-title">Needs a look</h2>
      <ul>
        {needy.slice(0, mostSessions).map(({ session, needs }) => (
          <li key={session.id}>
            <Button className="link-button" onPress={() => keptSessions.select(session.id)}>
              {dayWords(session.startedAt)}
            </Button>
            : {needs.map(findingSentence).join(' ')}
            {session.remark !== '' && ` Remark: “${session.remark}”`}
          </li>
        ))}
      </ul>
      {needy.length > mostSessions && (
        <p className="small">and {needy.length - mostSessions} more sessions that are not settled</p>
      )}
    </section>
  );
}
