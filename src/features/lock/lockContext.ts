import { createStoreContext } from '#shell/createStoreContext';
import type { LockSettings } from './store/createLockSettings';

/** Turning the passphrase lock on and off. */
export const {
  Provider: LockSettingsProvider,
  useOwner: useLockSettings,
  useOwnerState: useLockSettingsState,
} = createStoreContext<LockSettings>('LockSettingsProvider');
