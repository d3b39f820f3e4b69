import { useState } from 'react';
import { Button } from 'react-aria-components';
import { longestPatientText } from '#documents/patient/patientDocument';
import { useInitials } from '#features/sharing/screens/useInitials';
import { AskText } from '#ui/components/AskText';
import { usePatients } from '../patientsContext';
import { takeOut, type KeptList } from '../rules/takeOut';

interface Props {
  list: KeptList;
  id: string;
  /** What it is, as in 'this test'. */
  what: string;
}

/** A mistake is taken out of what is shown and counted, and stays in the record with who said so. */
export function TakeOut({ list, id, what }: Props) {
  const patients = usePatients();
  const { by: known, remember } = useInitials();
  const [isAsking, setAsking] = useState(false);
  return (
    <>
      <Button className="link-button" onPress={() => setAsking(true)}>
        Take out …
      </Button>
      <AskText
        isOpen={isAsking}
        onOpenChange={setAsking}
        title={`Was ${what} a mistake?`}
        label="Your initials"
        hint="It no longer counts. The record keeps it, with your initials and today’s date."
        answer="Take out"
        initial={known}
        maxLength={longestPatientText.by}
        onAnswer={(by) => {
          remember(by);
          void patients.record((patient, { at }) => takeOut(patient, list, id, { at, by: by.trim() }));
        }}
      />
    </>
  );
}
