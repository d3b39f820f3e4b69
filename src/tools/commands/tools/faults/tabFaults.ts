import type { Page } from '@playwright/test';
import { serveBuild } from '../serveBuild';
import { openOnceMore, visitOnce } from './offlineVisit';
import type { Fault } from './runFault';
import { openReview } from './screenFaults';
import { keptSessionsSay, shown, type Buckets } from './storageFaults';

declare global {
  interface Window {
    /** The database as another version of the program has it open. */
    otherVersion: { database: IDBDatabase | null; isAsked: boolean; giveUp: () => void };
  }
}

/** Runs in a page: opens the database of the program as it is, and never gives way to another version. */
async function holdDatabase(): Promise<void> {
  const { storageBuckets } = navigator as unknown as { storageBuckets: Buckets };
  const { indexedDB: factory } = await storageBuckets.open((await storageBuckets.keys())[0]!);
  window.otherVersion = {
    isAsked: false,
    giveUp: () => undefined,
    database: await new Promise((resolve) => {
      const opening = factory.open('overfoot');
      opening.onsuccess = () => resolve(opening.result);
    }),
  };
  window.otherVersion.database!.onversionchange = () => (window.otherVersion.isAsked = true);
}

/** Runs in a page: begins to bring the database up as a newer program does, and takes it back in the end. */
async function beginUpgrade(): Promise<void> {
  const { storageBuckets } = navigator as unknown as { storageBuckets: Buckets };
  const { indexedDB: factory } = await storageBuckets.open((await storageBuckets.keys())[0]!);
  const opening = factory.open('overfoot', 1000);
  await new Promise<void>((resolve) => {
    opening.onupgradeneeded = () => {
      const { transaction } = opening;
      const store = transaction!.objectStore('lock');
      let isOver = false;
      // A transaction without requests would end, and the database be of the newer version.
      const stay = () => {
        if (isOver) transaction!.abort();
        else store.count().onsuccess = stay;
      };
      stay();
      window.otherVersion = { database: null, isAsked: true, giveUp: () => (isOver = true) };
      resolve();
    };
  });
}

/** Types what is kept a moment later. */
async function remark(page: Page, text: string): Promise<void> {
  await page.getByRole('textbox', { name: /^On the set/ }).fill(text);
  await page.waitForTimeout(1500);
}

/** Faults of two versions of the program at a time. */
export const tabFaults: readonly Fault[] = [
  {
    name: 'database-blocked-by-an-older-tab',
    says: /does not answer.*Close all other tabs|Another tab.*in the way/,
    async put(device) {
      const older = await device.openStorage();
      await older.evaluate(holdDatabase);
      const page = await device.open(() => {
        const { open } = IDBFactory.prototype;
        // As a newer version of the program asks for it.
        IDBFactory.prototype.open = function (name: string, version?: number) {
          return open.call(this, name, version === undefined ? version : version + 10);
        };
      });
      const sentence = await keptSessionsSay(page, /does not answer|in the way/);
      if (!(await older.evaluate(() => window.otherVersion.isAsked))) throw new Error('Nobody was blocked.');
      await page.close();
      await older.close();
      return sentence;
    },
  },
  {
    name: 'newer-version-in-another-tab-during-a-review',
    says: /Another tab.*in the way/,
    mayChange: (key, { recordings }) => key === `recording ${recordings[0]!.id}`,
    holds: (after) => Object.values(after).some((text) => text.includes('Before the update.')),
    async put(device) {
      const page = await openReview(device);
      await page.getByRole('tab', { name: /^Remarks/ }).click();
      await remark(page, 'Before the update.');
      const newer = await device.openStorage();
      await newer.evaluate(beginUpgrade);
      await remark(page, 'During the update.');
      const sentence = await shown(page, /in the way/, 60_000);
      await newer.evaluate(() => window.otherVersion.giveUp());
      await newer.close();
      await page.close();
      return sentence;
    },
  },
  {
    name: 'half-updated-cache',
    says: null,
    async put(device) {
      const server = await serveBuild();
      const context = await device.context.browser()!.newContext({ baseURL: server.url });
      try {
        const page = await visitOnce(context);
        const removed = await page.evaluate(async () => {
          let count = 0;
          for (const name of await caches.keys()) {
            const cache = await caches.open(name);
            const requests = await cache.keys();
            for (const request of requests.filter((_, at) => at % 2 === 0))
              if (await cache.delete(request)) count++;
          }
          return count;
        });
        if (removed < 10) throw new Error('The page was not kept.');
        await openOnceMore(page);
        return null;
      } finally {
        await context.close();
        await server.close();
      }
    },
  },
];
