import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import { createMemoryVideos } from '#device/storage/memoryVideos';
import { openRecords } from '#device/storage/openRecords';
import type { Records } from '#device/storage/records';
import type { Shelves } from '#device/storage/shelves';
import type { Videos } from '#device/storage/videos';

/** Shelves that keep what was put on them, however often the program is opened, until they are removed. */
export function createTestShelves(): Shelves & {
  /** What lies on each, without this program's lock. */
  peek(): Promise<{ shelf: number; records: Records; videos: Videos }[]>;
} {
  const made = new Map<number, { indexedDB: IDBFactory; videos: Videos }>();
  const of = (shelf: number) => {
    const found = made.get(shelf) ?? { indexedDB: new IDBFactory(), videos: createMemoryVideos() };
    made.set(shelf, found);
    return found;
  };
  const open = (shelf: number) => openRecords('overfoot', { indexedDB: of(shelf).indexedDB, IDBKeyRange });
  return {
    leavesNothing: true,
    list: () => Promise.resolve([...made.keys()].sort((a, b) => a - b)),
    openRecords: open,
    openVideos: (shelf) => Promise.resolve(of(shelf).videos),
    storageOf: () => Promise.resolve(undefined),
    remove: (shelf) => {
      made.delete(shelf);
      return Promise.resolve();
    },
    forgetRest: () => Promise.resolve(),
    peek: () =>
      Promise.all(
        [...made].map(async ([shelf, { videos }]) => ({ shelf, records: await open(shelf), videos })),
      ),
  };
}
