import { createStoreContext } from '#shell/createStoreContext';
import type { Inbox } from './store/createInbox';

/** The kept sessions as they are listed. */
export const {
  Provider: InboxProvider,
  useOwner: useInbox,
  useOwnerState: useInboxState,
} = createStoreContext<Inbox>('InboxProvider');
