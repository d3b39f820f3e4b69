import { createStoreContext } from '#shell/createStoreContext';
import type { Offline } from './store/createOffline';

/** What keeps the page itself on the device. */
export const {
  Provider: OfflineProvider,
  useOwner: useOffline,
  useOwnerState: useOfflineState,
} = createStoreContext<Offline>('OfflineProvider');
