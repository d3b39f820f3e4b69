import { createStoreContext } from '#shell/createStoreContext';
import type { Library } from './store/library/createLibrary';

/** The practice's own library. */
export const {
  Provider: LibraryProvider,
  useOwner: useLibrary,
  useOwnerState: useLibraryState,
} = createStoreContext<Library>('LibraryProvider');
