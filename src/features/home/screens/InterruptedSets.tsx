import { Button } from 'react-aria-components';
import { findTask } from '#core/exercises/exercises';
import { Message } from '#ui/components/Message';
import { momentWords } from '#words/dateWords';
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
            Undo
          </Button>
        }
      >
        The set will be deleted when you continue.
      </Message>
    );
  }
  const isKeeping = state === 'keeping';
  return (
    <Message
      kind="caution"
      title="A set was interrupted"
      actions={
        <div className="button-row">
          <Button className="button" isDisabled={isKeeping} onPress={() => void home.recoverInterrupted(id)}>
            {isKeeping ? 'Saving …' : 'Keep it'}
          </Button>
          <Button className="button" isDisabled={isKeeping} onPress={() => home.dropInterrupted(id)}>
            Delete it
          </Button>
        </div>
      }
    >
      {findTask(task).name}, {side} leg, {momentWords(startedAt)}. {Math.round(seconds)} seconds were saved.
    </Message>
  );
}
