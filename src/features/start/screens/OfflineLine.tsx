import { Parts } from '#ui/components/Parts';
import { message, messageParts } from '#words/messages/message';
import { useOfflineState } from '../offlineContext';

/** Whether the page opens without a network; nothing where the browser can't keep it. */
export function OfflineLine() {
  const isReady = useOfflineState((state) => state.isReady);
  if (!isReady) return null;
  return (
    <p className="small soft">
      <Parts
        of={messageParts('start.offline', { title: <strong>{message('start.offline.title')}</strong> })}
      />
    </p>
  );
}
