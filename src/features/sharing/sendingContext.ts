import { createStoreContext } from '#shell/createStoreContext';
import type { Sending } from './store/createSending';

/** Sending a session. */
export const {
  Provider: SendingProvider,
  useOwner: useSending,
  useOwnerState: useSendingState,
} = createStoreContext<Sending>('SendingProvider');
