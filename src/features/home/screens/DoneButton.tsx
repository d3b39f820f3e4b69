import { useState } from 'react';
import { Button, Dialog, Heading } from 'react-aria-components';
import type { PlanDocument } from '#documents/plan/planDocument';
import { DialogBox } from '#ui/components/DialogBox';
import { useHome } from '../homeContext';

interface Props {
  plan: PlanDocument;
  isDisabled: boolean;
}

/** Keeps a session that was done without filming, once somebody says that all of it was done. */
export function DoneButton({ plan, isDisabled }: Props) {
  const home = useHome();
  const [isAsking, setAsking] = useState(false);
  return (
    <>
      <Button className="button button-quiet" isDisabled={isDisabled} onPress={() => setAsking(true)}>
        Done without filming
      </Button>
      <DialogBox isOpen={isAsking} onOpenChange={setAsking} isDismissable>
        <Dialog className="dialog" role="alertdialog">
          <Heading slot="title">Did you do all of it?</Heading>
          <p>Everything in your plan is then kept as done and not filmed. We ask how much it hurt.</p>
          <div className="dialog-answers">
            <Button className="button" onPress={() => setAsking(false)}>
              No
            </Button>
            <Button className="button button-primary" onPress={() => home.sayDone(plan.id)}>
              Yes, all of it
            </Button>
          </div>
        </Dialog>
      </DialogBox>
    </>
  );
}
