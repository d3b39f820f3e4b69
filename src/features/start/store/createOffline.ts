import { createStore, type StoreApi } from 'zustand/vanilla';

export interface OfflineState {
  /** Whether the page opens without a network from now on. */
  isReady: boolean;
  /** A newer version: none, waiting to be asked for, asked for while other tabs are open, or starting. */
  update: 'none' | 'waiting' | 'other-tabs' | 'starting';
}

/** What keeps the page on the device; tests hand in a plain object. */
export interface OfflineWorld {
  /** Whether a kept page answers already. */
  isKept(): boolean;
  /** Keeps the page; `startNewer` ends the older version and loads the page again. */
  keep(on: { ready: () => void; newer: (startNewer: () => void) => void }): void;
  /** Open tabs of this program, this one included. */
  countTabs(): Promise<number>;
}

export interface Offline {
  store: StoreApi<OfflineState>;
  /**
   * Starts the newer version. A version ends in every tab at once, and a set may be under way in another one:
   * with others open it only says so.
   */
  startUpdate(): Promise<void>;
}

/** Keeps the page for the time without a network, and a newer version until somebody asks for it. */
export function createOffline(world: OfflineWorld): Offline {
  const store = createStore<OfflineState>(() => ({ isReady: world.isKept(), update: 'none' }));
  let start: (() => void) | null = null;
  world.keep({
    ready: () => store.setState({ isReady: true }),
    newer(startNewer) {
      start = startNewer;
      store.setState({ update: 'waiting' });
    },
  });
  return {
    store,
    async startUpdate() {
      if (start === null || store.getState().update === 'starting') return;
      store.setState({ update: 'starting' });
      if ((await world.countTabs()) > 1) store.setState({ update: 'other-tabs' });
      else start();
    },
  };
}
