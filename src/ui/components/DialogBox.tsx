import type { ReactNode } from 'react';
import { Modal, ModalOverlay, type ModalOverlayProps } from 'react-aria-components';
import './dialog.css';

interface Props extends Pick<ModalOverlayProps, 'isOpen' | 'onOpenChange' | 'isDismissable'> {
  /** A Dialog, with the class 'dialog' unless it has a layout of its own. */
  children: ReactNode;
}

/** The box of a dialog, in the middle of the dimmed page. */
export function DialogBox({ children, ...overlay }: Props) {
  return (
    <ModalOverlay className="dialog-overlay" {...overlay}>
      <Modal className="dialog-box">{children}</Modal>
    </ModalOverlay>
  );
}
