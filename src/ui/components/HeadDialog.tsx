import type { ReactNode } from 'react';
import { Button, Dialog, DialogTrigger, Heading, Modal, ModalOverlay } from 'react-aria-components';

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
      <ModalOverlay className="ask-overlay" isDismissable>
        <Modal className="ask-box">
          <Dialog className="ask inbox-key">
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
        </Modal>
      </ModalOverlay>
    </DialogTrigger>
  );
}
