import { Button } from 'react-aria-components';
import { useInbox, useInboxState } from '../sessionsContext';
import { patientName, visitTime } from './visitWords';

/** What is about to go for good, with the way to take it back. */
export function Removals() {
  const inbox = useInbox();
  const removals = useInboxState((state) => state.removals);
  const visits = useInboxState((state) => state.visits);
  return (
    <div className="inbox-removals" role="status">
      {removals.map(({ id, patient }) => {
        const visit = visits?.find((one) => one.id === id);
        const name =
          patient !== null
            ? `Everything of ${patientName(patient)}`
            : visit === undefined
              ? 'A record'
              : `${patientName(visit.patient)}, ${visitTime(visit)}`;
        return (
          <div key={id} className="message">
            <div>
              <strong>{name}</strong> is deleted for good in a few seconds.
            </div>
            <Button autoFocus className="button" onPress={() => inbox.undoRemove(id)}>
              Undo
            </Button>
          </div>
        );
      })}
    </div>
  );
}
