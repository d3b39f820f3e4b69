import { createStoreContext } from '#shell/createStoreContext';
import type { Sharing } from './store/replica/createSharing';

/** Sharing within the practice through a server. */
export const {
  Provider: SharingProvider,
  useOwner: useSharing,
  useOwnerState: useSharingState,
} = createStoreContext<Sharing>('SharingProvider');
