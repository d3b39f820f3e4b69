import { useState } from 'react';
import { Button, Dialog, Heading } from 'react-aria-components';
import { useNavigation } from '#shell/navigation/navigationContext';
import { DialogBox } from '#ui/components/DialogBox';
import { PseudonymForm } from '#ui/components/PseudonymForm';
import { usePatients } from '../patientsContext';

/** Adds a patient before there is a session. */
export function AddPatient({ known }: { known: readonly string[] }) {
  const patients = usePatients();
  const navigation = useNavigation();
  const [isOpen, setOpen] = useState(false);
  const add = async (pseudonym: string) => {
    setOpen(false);
    const id = await patients.add(pseudonym);
    if (id !== null) await navigation.show('patient', false, id);
  };
  return (
    <>
      <Button className="button" onPress={() => setOpen(true)}>
        Add a patient …
      </Button>
      <DialogBox isOpen={isOpen} onOpenChange={setOpen} isDismissable>
        <Dialog className="dialog">
          <Heading slot="title">Add a patient</Heading>
          <PseudonymForm
            known={known}
            answer="Add"
            onCancel={() => setOpen(false)}
            onAnswer={(pseudonym) => void add(pseudonym)}
          />
        </Dialog>
      </DialogBox>
    </>
  );
}
