import { useKeptSessions } from '../keptSessionsContext';
import { DeleteButton } from './DeleteButton';
import { patientName } from './sessionWords';

/** Deletes everything of a patient, after a question. */
export function DeletePatient({ patient }: { patient: string }) {
  const keptSessions = useKeptSessions();
  return (
    <DeleteButton
      name="Delete this patient …"
      title={`Delete all records of ${patientName(patient)}?`}
      onDelete={() => void keptSessions.removePatient(patient)}
    >
      The record of {patientName(patient)}, all sessions with their measurements and videos, and this
      patient’s plans and drafts, will be deleted from this device. Files saved elsewhere stay, backups
      included.
    </DeleteButton>
  );
}
