import { Button } from 'react-aria-components';
import { useKeptSessionsState } from '../keptSessionsContext';
import { Message } from '#ui/components/Message';

/** That nothing lasts here, or that what is kept can't be got at; nothing where all is well. */
export function StorageMessage() {
  const storage = useKeptSessionsState((state) => state.storage);
  if (storage.state === 'memory') {
    return (
      <Message kind="caution" title="Nothing is kept after this tab is closed">
        {storage.sentence}
      </Message>
    );
  }
  if (storage.state !== 'blocked') return null;
  return (
    <Message
      kind="problem"
      title="What is kept here can’t be opened now"
      actions={
        <Button className="button" onPress={() => location.reload()}>
          Reload
        </Button>
      }
    >
      {storage.sentence}
    </Message>
  );
}
