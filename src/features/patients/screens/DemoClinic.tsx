import { Button } from 'react-aria-components';
import { useKeptSessions } from '#features/sessions/keptSessionsContext';
import { DeleteButton } from '#features/sessions/screens/DeleteButton';
import { usePatients, usePatientsState } from '../patientsContext';
import type { PatientRow } from '../rules/listPatients';

/** Loads the invented patients, or deletes all of them at once. */
export function DemoClinic({ rows }: { rows: readonly PatientRow[] }) {
  const patients = usePatients();
  const keptSessions = useKeptSessions();
  const making = usePatientsState((state) => state.making);
  const invented = rows.filter(({ isDemo }) => isDemo).map(({ pseudonym }) => pseudonym);
  if (making?.what === 'demo')
    return (
      <p className="small" role="status">
        Making the demo clinic: session {making.done + 1} of {Math.max(1, making.total)} …
      </p>
    );
  if (invented.length === 0)
    return (
      <Button
        className={rows.length === 0 ? 'button' : 'button button-quiet'}
        onPress={() => void patients.loadDemo()}
      >
        Load a demo clinic
      </Button>
    );
  return (
    <DeleteButton
      name="Delete the demo clinic …"
      title="Delete the demo clinic?"
      onDelete={() => void keptSessions.removePatients(invented, 'The demo clinic')}
    >
      All invented patients ({invented.join(', ')}) with their sessions and plans will be deleted from this
      device.
    </DeleteButton>
  );
}
