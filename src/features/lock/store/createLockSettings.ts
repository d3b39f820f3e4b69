import { createStore, type StoreApi } from 'zustand/vanilla';
import type { DeviceLock } from '#device/storage/lock/createDeviceLock';
import type { OpenedRepository } from '#device/storage/openRepository';
import { storageProblem } from '#device/storage/storageProblem';
import { explainProblem } from '#shell/explainProblem';
import { passphraseFault } from '#shell/passphrase';
import type { IdleLock, IdleMinutes } from './createIdleLock';

export interface LockSettingsState {
  /** Null until it was read, and where nothing can be locked. */
  isOn: boolean | null;
  /** Why what was asked of the lock last could not be done; null where it was. */
  undone: string | null;
  /** Whether what was kept in plain can't be read from the disk any more once it is sealed. */
  leavesNothing: boolean;
  idleMinutes: IdleMinutes;
  isWorking: boolean;
  /** What went wrong, or what was done. */
  sentence: string | null;
}

/** Turning the passphrase lock on and off. No action rejects: what goes wrong is in the state. */
export interface LockSettings {
  readonly store: StoreApi<LockSettingsState>;
  look(): Promise<void>;
  /** The page reloads afterwards: it asks for the passphrase, and seals what is kept. */
  turnOn(typed: { passphrase: string; repeated: string }, startsEmpty: boolean): Promise<void>;
  turnOff(passphrase: string): Promise<void>;
  /** The page reloads afterwards: everything is sealed anew. */
  change(passphrase: string, next: string, repeated: string): Promise<void>;
  setIdleMinutes(minutes: IdleMinutes): Promise<void>;
  /** Asks for the passphrase from now on, as if the page had just been opened. */
  lockNow(): void;
}

export function createLockSettings(world: {
  openRepository: () => Promise<OpenedRepository>;
  idle: Pick<IdleLock, 'minutes' | 'setMinutes'>;
  reload: () => void;
}): LockSettings {
  const store = createStore<LockSettingsState>(() => ({
    isOn: null,
    undone: null,
    leavesNothing: true,
    idleMinutes: world.idle.minutes(),
    isWorking: false,
    sentence: null,
  }));
  const attempt = async (work: (lock: DeviceLock) => Promise<string | null>) => {
    store.setState({ isWorking: true, sentence: null });
    try {
      const { lock } = (await world.openRepository()).repository;
      if (lock === null) throw storageProblem('private-window');
      const sentence = await work(lock);
      store.setState({
        isOn: await lock.isOn(),
        undone: lock.problem?.message ?? null,
        leavesNothing: lock.leavesNothing,
        sentence,
      });
    } catch (error) {
      store.setState({ sentence: explainProblem(error, 'do').sentence });
    } finally {
      store.setState({ isWorking: false });
    }
  };
  return {
    store,
    look: () => attempt(() => Promise.resolve(null)),
    turnOn: ({ passphrase, repeated }, startsEmpty) =>
      attempt(async (lock) => {
        const fault = await passphraseFault(passphrase, repeated);
        if (fault !== null) return fault;
        await lock.turnOn(passphrase, startsEmpty);
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
        const fault = await passphraseFault(next, repeated);
        if (fault !== null) return fault;
        await lock.changePassphrase(passphrase, next);
        world.reload();
        return null;
      }),
    setIdleMinutes: (idleMinutes) =>
      attempt(async () => {
        await world.idle.setMinutes(idleMinutes);
        store.setState({ idleMinutes });
        return null;
      }),
    lockNow: () => world.reload(),
  };
}
