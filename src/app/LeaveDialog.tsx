import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import './leaveDialog.css';
import { useNavigation, useNavigationState } from '#shell/navigation/navigationContext';

/** Asks before work that is not kept is left. */
export function LeaveDialog() {
  const navigation = useNavigation();
  const question = useNavigationState((state) => state.question);
  if (question === null) return null;
  return (
    <ModalOverlay className="leave-overlay" isOpen onOpenChange={() => navigation.answer(false)}>
      <Modal className="leave-box">
        <Dialog className="leave" role="alertdialog">
          <Heading slot="title">{question.title}</Heading>
          <p>{question.sentence}</p>
          <div className="leave-actions">
            <Button autoFocus className="button button-primary" onPress={() => navigation.answer(false)}>
              Stay here
            </Button>
            <Button className="button" onPress={() => navigation.answer(true)}>
              {question.leave}
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
