import { useEffect, useState } from 'react';
import { Button, Dialog, Heading } from 'react-aria-components';
import type { Colleague } from '#documents/practice/peopleNote';
import { DialogBox } from '#ui/components/DialogBox';
import { ErrorLine } from '#ui/components/ErrorLine';
import { KeyWords } from '#ui/components/KeyWords';
import { useHandOver, useHandOverState } from '../handOverContext';
import { usePeopleState } from '../peopleContext';
import { handedOverWords } from './handedOverWords';

/** Hands a patient over to a colleague of the practice, as one sealed file. */
export function GiveToColleague({ patientId, pseudonym }: { patientId: string; pseudonym: string }) {
  const handOver = useHandOver();
  const colleagues = usePeopleState((state) => state.colleagues);
  const [to, setTo] = useState<Colleague | null>(null);
  useEffect(() => () => handOver.dismiss(), [handOver, patientId]);
  const close = () => {
    setTo(null);
    handOver.dismiss();
  };
  if (colleagues.length === 0)
    return (
      <p className="small soft">
        To hand the whole record over to a colleague, add their key under Practice in the list of patients.
      </p>
    );
  return (
    <div className="button-row">
      {colleagues.map((colleague) => (
        <Button key={colleague.key} className="button" onPress={() => setTo(colleague)}>
          Hand over to {colleague.initials} …
        </Button>
      ))}
      <DialogBox isOpen={to !== null} onOpenChange={(isOpen) => !isOpen && close()} isDismissable>
        <Dialog className="dialog head-dialog">
          <Heading slot="title">
            Hand {pseudonym} over to {to?.initials}
          </Heading>
          {to !== null && <Giving patientId={patientId} to={to} />}
          <Button className="button button-quiet" onPress={close}>
            Close
          </Button>
        </Dialog>
      </DialogBox>
    </div>
  );
}

function Giving({ patientId, to }: { patientId: string; to: Colleague }) {
  const handOver = useHandOver();
  const state = useHandOverState((all) => all.state);
  const given = useHandOverState((all) => all.given);
  const sentence = useHandOverState((all) => all.sentence);
  return (
    <>
      <p>
        One file with the record, plans, sessions and recordings, without videos. It opens only with the key
        of {to.initials}: <KeyWords of={to.key} />. Everything stays here as well.
      </p>
      {given === null ? (
        <Button
          className="button button-primary"
          isDisabled={state === 'packing'}
          onPress={() => void handOver.give(patientId, to)}
        >
          {state === 'packing' ? 'Sealing …' : 'Save the file'}
        </Button>
      ) : (
        <p role="status">
          Saved: {handedOverWords(given.contents)}. Give the file to {given.to}. It is signed by this device,
          whose words are <KeyWords of={given.signer} />: {given.to} sees the same ones on opening it.
        </p>
      )}
      <ErrorLine sentence={sentence} />
    </>
  );
}
