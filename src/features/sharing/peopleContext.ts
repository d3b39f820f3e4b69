import { createStoreContext } from '#shell/createStoreContext';
import type { People } from './store/people/createPeople';

/** The people of the practice. */
export const {
  Provider: PeopleProvider,
  useOwner: usePeople,
  useOwnerState: usePeopleState,
} = createStoreContext<People>('PeopleProvider');
