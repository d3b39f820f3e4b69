import { createStoreContext } from '#shell/createStoreContext';
import type { HandOver } from './store/handOver/createHandOver';

/** Handing a patient over to a colleague. */
export const {
  Provider: HandOverProvider,
  useOwner: useHandOver,
  useOwnerState: useHandOverState,
} = createStoreContext<HandOver>('HandOverProvider');
