import { Button } from 'react-aria-components';
import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';
import { useOffline, useOfflineState } from '../offlineContext';

/** A newer version is available; it starts only when the user asks for it. */
export function UpdateMessage({ hasResult }: { hasResult: boolean }) {
  const offline = useOffline();
  const update = useOfflineState((state) => state.update);
  if (update === 'none') return null;
  return (
    <Message
      kind="plain"
      title={message('start.newer')}
      actions={
        <Button
          className="button"
          isDisabled={update === 'starting'}
          onPress={() => void offline.startUpdate()}
        >
          {message(update === 'starting' ? 'start.newer.starting' : 'start.newer.start')}
        </Button>
      }
    >
      {message(update === 'other-tabs' ? 'start.newer.other-tabs' : 'start.newer.reloads')}
      {hasResult && ` ${message('start.newer.save')}`}
    </Message>
  );
}
