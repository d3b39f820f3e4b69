import { useOfflineState } from '../offlineContext';

/** Whether the page opens without a network; nothing where the browser can't keep it. */
export function OfflineLine() {
  const isReady = useOfflineState((state) => state.isReady);
  if (!isReady) return null;
  return (
    <p className="small soft">
      <strong>Without a network:</strong> Overfoot is kept on this device and opens without one.
    </p>
  );
}
