import { createStoreContext } from '#shell/createStoreContext';
import type { KeptSessions } from './store/createKeptSessions';

/** The kept sessions as they are listed. */
export const {
  Provider: KeptSessionsProvider,
  useOwner: useKeptSessions,
  useOwnerState: useKeptSessionsState,
} = createStoreContext<KeptSessions>('KeptSessionsProvider');
