import type { ReactNode } from 'react';
import { Button, Dialog, DialogTrigger, Heading } from 'react-aria-components';
import { DialogBox } from './DialogBox';

interface Props {
  /** On the button that opens it. */
  name: string;
  title: string;
  children: ReactNode;
}

/** A button in the head of the kept sessions, and the dialog that it opens. */
export function HeadDialog({ name, title, children }: Props) {
  return (
    <DialogTrigger>
      <Button className="button button-quiet">{name}</Button>
      <DialogBox isDismissable>
        <Dialog className="dialog head-dialog">
          {({ close }) => (
            <>
              <Heading slot="title">{title}</Heading>
              {children}
              <Button className="button" onPress={close}>
                Close
              </Button>
            </>
          )}
        </Dialog>
      </DialogBox>
    </DialogTrigger>
  );
}
