import type { Page } from '@playwright/test';
import type { Repository } from '#device/storage/repository';
import { openKeptSessions } from '../openKeptSessions';
import type { FaultDevice } from './faultDevice';
import type { Fault } from './runFault';

/** Shows the kept sessions, and gives the first alert whose text fits. */
export async function keptSessionsSay(page: Page, text: RegExp): Promise<string | null> {
  await openKeptSessions(page);
  return shown(page, text);
}

export async function shown(page: Page, text: RegExp, withinMs = 20_000): Promise<string | null> {
  const found = page.getByText(text).first();
  await found.waitFor({ timeout: withinMs });
  return found.innerText();
}

/** The first patient's session as it would come again, with other answers and another video. */
function comingAgain({ sessions, recordings }: FaultDevice) {
  const [session] = sessions;
  return {
    session: { ...session, remark: 'Said later.' },
    recordings: recordings.slice(0, 2).map((recording) => ({ ...recording, note: 'Measured again.' })),
  };
}

/** Runs in the page: keeps a session that comes again. */
async function keepAgain({ session, recordings }: ReturnType<typeof comingAgain>): Promise<string | null> {
  const { repository } = await window.storagePage.openRepository();
  const video = new Blob([new Uint8Array(3_000_000)], { type: 'video/mp4' });
  try {
    await repository.keepTogether(
      session,
      recordings.map((recording) => ({ recording, visitId: session.id, fromVideo: 'done', video })),
    );
    return null;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** What a tab holds of a recording that it has opened. */
interface Opened {
  repository: Repository;
  found: NonNullable<Awaited<ReturnType<Repository['recordings']['findHead']>>>;
}

export interface Buckets {
  keys(): Promise<string[]>;
  open(name: string): Promise<{ indexedDB: IDBFactory }>;
}

/** Moments after the beginning at which the tab ends, ms. */
const killedAfterMs = [0, 10, 40, 100, 250, 600];

const full = () => {
  const { put } = IDBObjectStore.prototype;
  let left = 3;
  IDBObjectStore.prototype.put = function (...asked: Parameters<typeof put>) {
    if (left-- <= 0) throw new DOMException('no room', 'QuotaExceededError');
    return put.apply(this, asked);
  };
};

export const storageFaults: readonly Fault[] = [
  {
    name: 'storage-never-answers',
    says: /does not answer.*Close all other tabs/,
    async put(device) {
      const page = await device.open(() => {
        IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest;
      });
      return keptSessionsSay(page, /does not answer/);
    },
  },
  {
    name: 'storage-refused',
    says: /refuses to keep anything.*Allow site data/,
    async put(device) {
      const page = await device.open(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('refused', 'SecurityError');
        };
      });
      return keptSessionsSay(page, /refuses to keep anything/);
    },
  },
  {
    name: 'record-damaged',
    says: /can’t be read.*Restore it from a saved file, or delete it/,
    mayChange: (key, { sessions }) => key === `session ${sessions[0].id}`,
    async put(device) {
      const page = await device.openStorage();
      await page.evaluate(async (id) => {
        // Where the browser has buckets, what is kept lies in one of them.
        const { storageBuckets } = navigator as unknown as { storageBuckets?: Buckets };
        const names = (await storageBuckets?.keys()) ?? [];
        const opened = await Promise.all(names.map((name) => storageBuckets!.open(name)));
        for (const factory of [indexedDB, ...opened.map((bucket) => bucket.indexedDB)]) {
          if (!(await factory.databases()).some(({ name }) => name === 'overfoot')) continue;
          await new Promise<void>((resolve) => {
            factory.open('overfoot').onsuccess = ({ target }) => {
              const database = (target as IDBOpenDBRequest).result;
              const store = database.transaction('visits', 'readwrite').objectStore('visits');
              store.get(id).onsuccess = ({ target: read }) => {
                const row = (read as IDBRequest<{ value: { painAfter: number } } | undefined>).result;
                if (row !== undefined) {
                  row.value.painAfter = 9;
                  store.put(row);
                }
                store.transaction.oncomplete = () => {
                  database.close();
                  resolve();
                };
              };
            };
          });
        }
      }, device.sessions[0].id);
      return keptSessionsSay(await device.open(), /can’t be read/);
    },
  },
  {
    name: 'full-while-replacing',
    says: /storage is full/,
    async put(device) {
      const page = await device.openStorage(full);
      return page.evaluate(keepAgain, comingAgain(device));
    },
  },
  {
    name: 'killed-while-replacing',
    says: null,
    // Whole in one version or the other, never a part of both.
    mayChange: (key, { sessions, recordings }) =>
      key === `session ${sessions[0].id}` ||
      recordings.slice(0, 2).some(({ id }) => key === `recording ${id}` || key === `video ${id}`),
    holds(after, before) {
      const changed = Object.keys(before).filter((key) => after[key] !== before[key]);
      return Object.keys(after).length === Object.keys(before).length && [0, 5].includes(changed.length);
    },
    async put(device) {
      for (const afterMs of killedAfterMs) {
        const page = await device.openStorage();
        void page.evaluate(keepAgain, comingAgain(device)).catch(() => undefined);
        await new Promise((resolve) => setTimeout(resolve, afterMs));
        await page.close({ runBeforeUnload: false });
      }
      return null;
    },
  },
  {
    name: 'two-tabs-one-review',
    says: /Another tab has changed this.*nothing was overwritten/,
    mayChange: (key, { recordings }) => key === `recording ${recordings[0]!.id}`,
    holds: (after) => Object.values(after).some((text) => text.includes('The first tab’s remark.')),
    async put(device) {
      const [one, other] = [await device.openStorage(), await device.openStorage()];
      const id = device.recordings[0]!.id;
      const openIn = (page: Page) =>
        page.evaluate(async (wanted) => {
          const { repository } = await window.storagePage.openRepository();
          const found = (await repository.recordings.findHead(wanted))!;
          Object.assign(window, { opened: { repository, found } });
        }, id);
      await openIn(one);
      await openIn(other);
      const saveIn = (page: Page, text: string) =>
        page.evaluate(async (remark) => {
          const { repository, found } = (window as unknown as { opened: Opened }).opened;
          const { recording, edition } = found;
          const remarks = [{ atMs: null, text: remark, by: '', at: recording.createdAt }];
          const review = { limitsSet: [], cues: [], reviewed: null, remarks };
          try {
            await repository.recordings.update({ ...recording, review }, edition);
            return null;
          } catch (error) {
            return (error as Error).message;
          }
        }, text);
      await saveIn(one, 'The first tab’s remark.');
      return saveIn(other, 'The second tab’s remark.');
    },
  },
  {
    name: 'site-data-cleared-in-a-set',
    says: /no longer kept on this device.*site data/,
    mayChange: () => true,
    async put(device) {
      const page = await device.openStorage();
      const recording = device.recordings[0]!;
      const start = {
        id: crypto.randomUUID(),
        startedAt: recording.createdAt,
        visitId: null,
        visitSet: null,
        setup: recording.setup,
        limits: recording.limits,
        note: recording.note,
        widthPx: recording.video.widthPx,
        heightPx: recording.video.heightPx,
        model: recording.observed.model,
        videoType: 'video/webm',
      };
      await page.evaluate(async (asked) => {
        const { repository } = await window.storagePage.openRepository();
        const set = await repository.beginSet(asked, () => undefined);
        await set.video?.write(new Blob(['pictures']));
        Object.assign(window, { set });
      }, start);
      const browser = await device.context.newCDPSession(page);
      const { origin } = new URL(page.url());
      await browser.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
      return page.evaluate(
        async (kept) => {
          const { set } = window as unknown as { set: Awaited<ReturnType<Repository['beginSet']>> };
          try {
            await set.video?.write(new Blob(['more pictures']));
            await set.endVideo();
            await set.finish(kept, 'impossible', null);
            return 'The set was kept anew.';
          } catch (error) {
            return error instanceof Error ? error.message : String(error);
          }
        },
        { ...recording, id: start.id },
      );
    },
  },
  {
    name: 'video-writer-silent',
    says: /does not answer/,
    async put(device) {
      const page = await device.openStorage(() => {
        const { postMessage } = Worker.prototype;
        Worker.prototype.postMessage = function (...asked: unknown[]) {
          const { path = [] } = asked[0] as { path?: string[] };
          if (!path.includes('write')) postMessage.apply(this, asked as [unknown]);
        };
      });
      return page.evaluate(keepAgain, comingAgain(device));
    },
  },
];
