import { createStoreContext } from '#shell/createStoreContext';
import type { Backup } from './store/backup/createBackup';

/** One sealed file of everything that is kept. */
export const {
  Provider: BackupProvider,
  useOwner: useBackup,
  useOwnerState: useBackupState,
} = createStoreContext<Backup>('BackupProvider');
