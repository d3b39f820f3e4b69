import { createStoreContext } from '#shell/createStoreContext';
import type { Mirror } from './store/createMirror';

/** The live mirror. */
export const {
  Provider: MirrorProvider,
  useOwner: useMirror,
  useOwnerState: useMirrorState,
} = createStoreContext<Mirror>('MirrorProvider');
