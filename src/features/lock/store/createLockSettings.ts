import { createStore, type StoreApi } from 'zustand/vanilla';
import type { DeviceLock } from '#device/storage/lock/createDeviceLock';
import type { OpenedRepository } from '#device/storage/openRepository';
import { storageProblem } from '#device/storage/storageProblem';
import { explainProblem } from '#shell/explainProblem';
import { passphraseFault } from '#shell/seal';

export interface LockSettingsState {
  /** Null until it was read, and where nothing can be locked. */
  isOn: boolean | null;
  isWorking: boolean;
  /** What went wrong, or what was done. */
  sentence: string | null;
}

/** Turning the passphrase lock on and off. No action rejects: what goes wrong is in the state. */
export interface LockSettings {
  readonly store: StoreApi<LockSettingsState>;
  look(): Promise<void>;
  /** The page reloads afterwards: it asks for the passphrase, and seals what is kept. */
  turnOn(passphrase: string, repeated: string): Promise<void>;
  turnOff(passphrase: string): Promise<void>;
  change(passphrase: string, next: string, repeated: string): Promise<void>;
  /** Asks for the passphrase from now on, as if the page had just been opened. */
  lockNow(): void;
}

export function createLockSettings(world: {
  openRepository: () => Promise<OpenedRepository>;
  reload: () => void;
}): LockSettings {
  const store = createStore<LockSettingsState>(() => ({ isOn: null, isWorking: false, sentence: null }));
  const attempt = async (work: (lock: DeviceLock) => Promise<string | null>) => {
    store.setState({ isWorking: true, sentence: null });
    try {
      const { lock } = (await world.openRepository()).repository;
      if (lock === null) throw storageProblem('private-window');
      const sentence = await work(lock);
      store.setState({ isOn: await lock.isOn(), sentence });
    } catch (error) {
      store.setState({ sentence: explainProblem(error, 'be done').sentence });
    } finally {
      store.setState({ isWorking: false });
    }
  };
  return {
    store,
    look: () => attempt(() => Promise.resolve(null)),
    turnOn: (passphrase, repeated) =>
      attempt(async (lock) => {
        const fault = passphraseFault(passphrase, repeated);
        if (fault !== null) return fault;
        await lock.turnOn(passphrase);
        world.reload();
        return null;
      }),
    turnOff: (passphrase) =>
      attempt(async (lock) => {
        await lock.turnOff(passphrase);
        world.reload();
        return null;
      }),
    change: (passphrase, next, repeated) =>
      attempt(async (lock) => {
        const fault = passphraseFault(next, repeated);
        if (fault !== null) return fault;
        await lock.changePassphrase(passphrase, next);
        return 'The passphrase was changed.';
      }),
    lockNow: () => world.reload(),
  };
}
