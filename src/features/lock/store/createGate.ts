import { createStore, type StoreApi } from 'zustand/vanilla';
import type { LockedDevice } from '#device/storage/lock/openLocked';
import { explainProblem } from '#shell/explainProblem';

export interface GateState {
  /** 'open' also before it is known whether the device is locked. */
  state: 'open' | 'asking' | 'trying';
  /** Whether the lock itself is damaged, so that no passphrase opens it. */
  isDamaged: boolean;
  /** How far what is kept is sealed or opened after the lock was turned on or off; null where nothing is to be done. */
  progress: { done: number; total: number } | null;
  /** Why the last try did not open it. */
  sentence: string | null;
}

/** Blocks everything else while what is kept on this device is locked. No action rejects. */
export interface Gate {
  readonly store: StoreApi<GateState>;
  /** Passed to the opener of the repository: resolves once the device is unlocked. */
  ask(device: LockedDevice): Promise<void>;
  unlock(passphrase: string): Promise<void>;
  /** Deletes everything that is kept here, for somebody who has lost the passphrase. */
  eraseAll(): Promise<void>;
}

export function createGate(): Gate {
  const store = createStore<GateState>(() => ({
    state: 'open',
    isDamaged: false,
    progress: null,
    sentence: null,
  }));
  let locked: { device: LockedDevice; open: () => void } | null = null;
  const attempt = async (work: (device: LockedDevice) => Promise<void>) => {
    if (locked === null || store.getState().state !== 'asking') return;
    store.setState({ state: 'trying', sentence: null });
    try {
      await work(locked.device);
      locked.open();
      locked = null;
      store.setState({ state: 'open', progress: null });
    } catch (error) {
      const { sentence } = explainProblem(error, 'open');
      store.setState({ state: 'asking', progress: null, sentence });
    }
  };
  return {
    store,
    ask: (device) =>
      new Promise((open) => {
        locked = { device, open };
        store.setState({ state: 'asking', isDamaged: device.isDamaged });
      }),
    unlock: (passphrase) =>
      attempt((device) =>
        device.unlock(passphrase, (done, total) => store.setState({ progress: { done, total } })),
      ),
    eraseAll: () => attempt((device) => device.eraseAll()),
  };
}
