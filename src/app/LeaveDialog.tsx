import { Button, Dialog, Heading } from 'react-aria-components';
import { useNavigation, useNavigationState } from '#shell/navigation/navigationContext';
import { DialogBox } from '#ui/components/DialogBox';
import { message } from '#words/messages/message';

/** Asks before unsaved work is left. */
export function LeaveDialog() {
  const navigation = useNavigation();
  const question = useNavigationState((state) => state.question);
  if (question === null) return null;
  return (
    <DialogBox isOpen onOpenChange={() => navigation.answer(false)}>
      <Dialog className="dialog" role="alertdialog">
        <Heading slot="title">{question.title}</Heading>
        <p>{question.sentence}</p>
        <div className="dialog-answers">
          <Button autoFocus className="button button-primary" onPress={() => navigation.answer(false)}>
            {message('leave.stay')}
          </Button>
          <Button className="button" onPress={() => navigation.answer(true)}>
            {question.leave}
          </Button>
        </div>
      </Dialog>
    </DialogBox>
  );
}
