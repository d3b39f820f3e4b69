import { Button } from 'react-aria-components';
import { Message } from '#ui/components/Message';
import { useOffline, useOfflineState } from '../offlineContext';

/** A newer version is available; it starts only when the user asks for it. */
export function UpdateMessage({ hasResult }: { hasResult: boolean }) {
  const offline = useOffline();
  const update = useOfflineState((state) => state.update);
  if (update === 'none') return null;
  return (
    <Message
      kind="plain"
      title="A newer version of Overfoot is ready"
      actions={
        <Button
          className="button"
          isDisabled={update === 'starting'}
          onPress={() => void offline.startUpdate()}
        >
          {update === 'starting' ? 'Starting …' : 'Start it'}
        </Button>
      }
    >
      {update === 'other-tabs'
        ? 'It is open in another tab, where a set may be under way. Close the other tabs, then start it.'
        : 'The page will reload. Nothing kept on this device is lost.'}
      {hasResult && ' Save the open result first: it will be lost when the page reloads.'}
    </Message>
  );
}
