import { useState } from 'react';
import { Button, Dialog, Heading } from 'react-aria-components';
import type { PlanDocument } from '#documents/plan/planDocument';
import { DialogBox } from '#ui/components/DialogBox';
import { message } from '#words/messages/message';
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
        {message('today.done-unfilmed')}
      </Button>
      <DialogBox isOpen={isAsking} onOpenChange={setAsking} isDismissable>
        <Dialog className="dialog" role="alertdialog">
          <Heading slot="title">{message('today.all-done')}</Heading>
          <p>{message('today.all-done.what')}</p>
          <div className="dialog-answers">
            <Button className="button" onPress={() => setAsking(false)}>
              {message('today.no')}
            </Button>
            <Button className="button button-primary" onPress={() => home.sayDone(plan.id)}>
              {message('today.yes-all')}
            </Button>
          </div>
        </Dialog>
      </DialogBox>
    </>
  );
}
