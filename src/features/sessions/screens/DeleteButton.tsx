import { useState, type ReactNode } from 'react';
import { Button, Dialog, Heading } from 'react-aria-components';
import { DialogBox } from '#ui/components/DialogBox';

interface Props {
  /** On the button. */
  name?: string;
  /** The question. */
  title: string;
  /** What is deleted, and what stays. */
  children: ReactNode;
  onDelete: () => void;
}

/** Deletes after a question that says what will be deleted. */
export function DeleteButton({ name = 'Delete …', title, children, onDelete }: Props) {
  const [isAsking, setAsking] = useState(false);
  const answer = (isYes: boolean) => {
    setAsking(false);
    if (isYes) onDelete();
  };
  return (
    <>
      <Button className="button button-quiet" onPress={() => setAsking(true)}>
        {name}
      </Button>
      <DialogBox isOpen={isAsking} onOpenChange={setAsking}>
        <Dialog role="alertdialog" className="dialog">
          <Heading slot="title">{title}</Heading>
          <p>{children}</p>
          <p>You can undo this for ten seconds. After that, nobody can.</p>
          <div className="dialog-answers">
            <Button autoFocus className="button" onPress={() => answer(false)}>
              Keep it
            </Button>
            <Button className="button button-delete" onPress={() => answer(true)}>
              Delete
            </Button>
          </div>
        </Dialog>
      </DialogBox>
    </>
  );
}
