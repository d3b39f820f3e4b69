import { Button } from 'react-aria-components';
import { message } from '#words/messages/message';
import { Message } from './Message';

interface Props {
  /** Null where nothing went wrong. */
  problem: { title: string; sentence: string } | null;
  onClose: () => void;
}

/** The latest problem, until it is closed. */
export function ProblemMessage({ problem, onClose }: Props) {
  if (problem === null) return null;
  return (
    <Message
      kind="problem"
      title={problem.title}
      actions={
        <Button className="button button-quiet" onPress={onClose}>
          {message('home.close')}
        </Button>
      }
    >
      {problem.sentence}
    </Message>
  );
}
