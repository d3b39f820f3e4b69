import { useHomeState } from '../homeContext';
import { Message } from '#ui/components/Message';

/** That what is recorded does not outlast the tab, or that nothing can be begun. */
export function StorageNotice() {
  const storage = useHomeState((state) => state.storage);
  if (storage.state === 'memory') {
    return (
      <Message kind="caution" title="What you record is gone when this tab is closed">
        {storage.sentence}
      </Message>
    );
  }
  if (storage.state === 'blocked') {
    return (
      <Message kind="problem" title="Nothing can be begun yet">
        {storage.sentence}
      </Message>
    );
  }
  return null;
}
