import type { ReactNode } from 'react';
import { Button, Dialog, DialogTrigger, Heading } from 'react-aria-components';
import { DialogBox } from './DialogBox';

interface Props {
  /** On the button that opens it. */
  name: string;
  title: string;
  /** What is in it; a function is given what closes it. */
  children: ReactNode | ((close: () => void) => ReactNode);
}

/** A quiet button, as in the head of a page, and the dialog that it opens. */
export function HeadDialog({ name, title, children }: Props) {
  return (
    <DialogTrigger>
      <Button className="button button-quiet">{name}</Button>
      <DialogBox isDismissable>
        <Dialog className="dialog head-dialog">
          {({ close }) => (
            <>
              <Heading slot="title">{title}</Heading>
              {typeof children === 'function' ? children(close) : children}
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
