import { Button } from 'react-aria-components';
import { Message } from '#ui/components/Message';
import { momentWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { message } from '#words/messages/message';
import { useHome, useHomeState } from '../homeContext';
import type { InterruptedView } from '../store/homeState';

/** Sets whose recording was interrupted: to keep or to delete. */
export function InterruptedSets() {
  const interrupted = useHomeState((state) => state.interrupted);
  return interrupted.map((set) => <InterruptedSet key={set.id} set={set} />);
}

function InterruptedSet({ set }: { set: InterruptedView }) {
  const home = useHome();
  const { id, task, side, seconds, startedAt, state } = set;
  if (state === 'dropped') {
    return (
      <Message
        kind="plain"
        actions={
          <Button className="button" onPress={() => home.undoDrop(id)}>
            {message('home.undo')}
          </Button>
        }
      >
        {message('interrupted.dropped')}
      </Message>
    );
  }
  const isKeeping = state === 'keeping';
  return (
    <Message
      kind="caution"
      title={message('interrupted.title')}
      actions={
        <div className="button-row">
          <Button className="button" isDisabled={isKeeping} onPress={() => void home.recoverInterrupted(id)}>
            {message(isKeeping ? 'interrupted.keeping' : 'interrupted.keep')}
          </Button>
          <Button className="button" isDisabled={isKeeping} onPress={() => home.dropInterrupted(id)}>
            {message('interrupted.drop')}
          </Button>
        </div>
      }
    >
      {message('interrupted.what', {
        exercise: exerciseName(task),
        side,
        moment: momentWords(startedAt),
        seconds: Math.round(seconds),
      })}
    </Message>
  );
}
