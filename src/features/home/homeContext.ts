import { createStoreContext } from '#shell/createStoreContext';
import type { HomeApp } from './store/homeApp';

/** The session at home. */
export const {
  Provider: HomeProvider,
  useOwner: useHome,
  useOwnerState: useHomeState,
} = createStoreContext<HomeApp>('HomeProvider');
