import { registerSW } from 'virtual:pwa-register';
import type { OfflineWorld } from './createOffline';

const tabLock = 'overfoot-tab';

/** The browser's service worker and locks; where it has neither, nothing is kept and every tab is alone. */
export function browserOffline(): OfflineWorld {
  const { serviceWorker, locks } = navigator as Partial<Navigator>;
  // Held as long as the tab lives; a browser that refuses its locks counts this tab alone.
  locks?.request(tabLock, { mode: 'shared' }, () => new Promise(() => undefined)).catch(() => undefined);
  return {
    isKept: () => (serviceWorker?.controller ?? null) !== null,
    keep({ ready, newer }) {
      // A worker that was still being installed when an earlier opening was left does not report elsewhere that it
      // is done.
      serviceWorker?.addEventListener('controllerchange', ready);
      const startNewer = registerSW({
        onOfflineReady: ready,
        onNeedRefresh: () => newer(() => void startNewer()),
        onRegisterError: () => undefined, // Then it opens with a network only, as before.
      });
    },
    async countTabs() {
      const { held = [] } = (await locks?.query().catch(() => undefined)) ?? {};
      return Math.max(1, held.filter(({ name }) => name === tabLock).length);
    },
  };
}
