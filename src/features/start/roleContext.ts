import type { RoleKeeper } from '#shell/createRole';
import { createStoreContext } from '#shell/createStoreContext';

/** What somebody uses this device for. */
export const {
  Provider: RoleProvider,
  useOwner: useRole,
  useOwnerState: useRoleState,
} = createStoreContext<RoleKeeper>('RoleProvider');
