import { Button } from 'react-aria-components';
import { momentWords } from '#words/dateWords';
import { useKeptSessions, useKeptSessionsState } from '../keptSessionsContext';
import { patientName } from './sessionWords';

/** What is about to be deleted for good, with a way to undo it. */
export function Removals() {
  const keptSessions = useKeptSessions();
  const removals = useKeptSessionsState((state) => state.removals);
  const sessions = useKeptSessionsState((state) => state.sessions);
  return (
    <div className="sessions-removals" role="status">
      {removals.map(({ id, patients: [patient = null], name: together }) => {
        const session = sessions?.find((one) => one.id === id);
        const name =
          together !== null
            ? together
            : patient !== null
              ? `All records of ${patientName(patient)}`
              : session === undefined
                ? 'A record'
                : `${patientName(session.patient)}, ${momentWords(session.startedAt)}`;
        return (
          <div key={id} className="message">
            <div>
              <strong>{name}</strong> will be deleted for good in a few seconds.
            </div>
            <Button autoFocus className="button" onPress={() => keptSessions.undoRemove(id)}>
              Undo
            </Button>
          </div>
        );
      })}
    </div>
  );
}
