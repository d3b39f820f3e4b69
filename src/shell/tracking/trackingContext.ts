import { createStoreContext } from '../createStoreContext';
import type { Tracking } from './createTracking';

/** The page's one pose network, and the video that is tracked with it. */
export const {
  Provider: TrackingProvider,
  useOwner: useTracking,
  useOwnerState: useTrackingState,
} = createStoreContext<Tracking>('TrackingProvider');
