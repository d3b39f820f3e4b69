import { createStoreContext } from '../createStoreContext';
import type { Navigation } from './createNavigation';

/** Moving between screens. */
export const {
  Provider: NavigationProvider,
  useOwner: useNavigation,
  useOwnerState: useNavigationState,
} = createStoreContext<Navigation>('NavigationProvider');
