import { createContext, use, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { Backup, BackupState } from './createBackup';

const BackupContext = createContext<Backup | null>(null);

export function BackupProvider({ backup, children }: { backup: Backup; children: ReactNode }) {
  return <BackupContext value={backup}>{children}</BackupContext>;
}

/** One sealed file of everything that is kept. */
export function useBackup(): Backup {
  const backup = use(BackupContext);
  if (backup === null) throw new Error('useBackup needs a BackupProvider above it.');
  return backup;
}

/** A part of its state; the component is drawn again when that part changes. */
export function useBackupState<Part>(select: (state: BackupState) => Part): Part {
  return useStore(useBackup().store, select);
}
