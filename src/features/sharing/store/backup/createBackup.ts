import { createStore, type StoreApi } from 'zustand/vanilla';
import type { OpenedRepository } from '#device/storage/openRepository';
import { explainProblem, type Doing } from '#shell/explainProblem';
import { passphraseFault } from '#shell/passphrase';
import { sealByPassphrase, unsealByPassphrase } from '#shell/seal';
import { openBackup, type ReadableBackup } from './openBackup';
import { lastBackupName, packBackup, type SavedContents } from './packBackup';
import { checkBackup, restoreBackup, type BackupReport } from './restoreBackup';

export interface BackupState {
  /** 'asks': a backup was read whole, and the user has to choose what is restored. */
  state: 'idle' | 'saving' | 'saved' | 'checking' | 'asks' | 'restoring' | 'restored';
  /** Recordings that are done; null while nothing is being done, or the total is not known yet. */
  progress: { done: number; total: number } | null;
  /** What is in the one that was just saved. */
  saved: SavedContents | null;
  /** The one that was opened. */
  found: (BackupReport & { createdAt: string }) | null;
  sentence: string | null;
  /** When a backup was last saved from this device, ISO 8601, or that none was; null until that is known. */
  last: { at: string | null } | null;
}

/** What backups need from the world around them; tests hand in plain objects. */
export interface BackupWorld {
  openRepository: () => Promise<OpenedRepository>;
  saveBlob(fileName: string, blob: Blob): void;
  now(): Date;
  /** log2 of the cost of trying a passphrase; age's default if left out. */
  scryptWorkFactor?: number;
}

/** One sealed file of everything that is kept. No action rejects: what goes wrong is in the state. */
export interface Backup {
  readonly store: StoreApi<BackupState>;
  /** Finds out when a backup was last saved. */
  look(): Promise<void>;
  save(passphrase: string, repeated: string): Promise<void>;
  /** Reads and checks a whole backup; nothing is written. */
  open(file: Blob, passphrase: string): Promise<void>;
  /** @param replaces  whether other versions kept here are replaced */
  restore(replaces: boolean): Promise<void>;
  /** Cancels saving or checking; forgets a backup that was opened. */
  cancel(): void;
}

class CalledOff extends Error {}

export function createBackup(world: BackupWorld): Backup {
  const idle: Omit<BackupState, 'last'> = {
    state: 'idle',
    progress: null,
    saved: null,
    found: null,
    sentence: null,
  };
  const store = createStore<BackupState>(() => ({ ...idle, last: null }));
  let opened: ReadableBackup | null = null;
  let turn = 0;

  /** Does work that reports progress and can be cancelled. */
  const attempt = async (
    state: BackupState['state'],
    doing: Doing,
    work: (onProgress: (done: number, total: number) => void) => Promise<Partial<BackupState>>,
  ) => {
    const mine = ++turn;
    const onProgress = (done: number, total: number) => {
      if (mine !== turn) throw new CalledOff();
      store.setState({ progress: { done, total } });
    };
    store.setState({ ...idle, state });
    try {
      const end = await work(onProgress);
      if (mine === turn) store.setState({ progress: null, ...end });
    } catch (error) {
      if (mine === turn) store.setState({ ...idle, sentence: explainProblem(error, doing).sentence });
    }
  };

  return {
    store,
    async look() {
      // Where nothing can be read, the dialog goes without the date; saving says why.
      const opened = await world.openRepository().catch(() => null);
      const notes = await opened?.repository.notes.read().catch(() => null);
      if (notes) store.setState({ last: { at: notes.get(lastBackupName) ?? null } });
    },
    async save(passphrase, repeated) {
      await attempt('saving', 'save', async (onProgress) => {
        const fault = await passphraseFault(passphrase, repeated);
        if (fault !== null) return { state: 'idle', sentence: fault };
        const { repository } = await world.openRepository();
        const createdAt = world.now().toISOString();
        const { blob, contents } = await packBackup(repository, createdAt, onProgress);
        const sealed = await sealByPassphrase(passphrase, blob, world.scryptWorkFactor);
        onProgress(contents.recordings, contents.recordings); // Not saved if it was cancelled meanwhile.
        world.saveBlob(`overfoot-backup-${createdAt.slice(0, 10)}.age`, sealed);
        // The file is there all the same where the date can't be kept.
        await repository.notes.write(lastBackupName, createdAt).catch(() => undefined);
        return { state: 'saved', saved: contents, last: { at: createdAt } };
      });
    },
    async open(file, passphrase) {
      opened = null;
      await attempt('checking', 'open', async (onProgress) => {
        const backup = await openBackup(await unsealByPassphrase(passphrase, file));
        const report = await checkBackup(backup, (await world.openRepository()).repository, onProgress);
        opened = backup;
        return { state: 'asks', found: { ...report, createdAt: backup.createdAt } };
      });
    },
    async restore(replaces) {
      const backup = opened;
      if (backup === null) return;
      opened = null;
      const { found } = store.getState();
      await attempt('restoring', 'restore', async (onProgress) => {
        await restoreBackup(backup, (await world.openRepository()).repository, replaces, onProgress);
        return { state: 'restored', found };
      });
    },
    cancel() {
      turn++;
      opened = null;
      store.setState(idle);
    },
  };
}
