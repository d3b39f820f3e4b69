import { useEffect } from 'react';
import { Button } from 'react-aria-components';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { usePatients, usePatientsState } from '../patientsContext';
import { stateOf } from '../rules/listPatients';

/** Marks the shown session as viewed, and as settled once nothing in it is left to do. */
export function SettleLine({ session }: { session: ListedSession }) {
  const patients = usePatients();
  const state = usePatientsState(({ patient }) => stateOf(patient?.marks ?? [], session));
  const isNew = state === 'new';
  useEffect(() => {
    if (isNew) void patients.mark(session.id, 'viewed');
  }, [patients, session.id, isNew]);
  if (state === 'settled') return <span className="soft">Settled: nothing left to do</span>;
  if (session.isOpen)
    return <span className="soft small">What was said of the body is to be signed as settled first.</span>;
  return (
    <Button className="button" onPress={() => void patients.mark(session.id, 'settled')}>
      Nothing left to do here
    </Button>
  );
}
