import { Dexie } from 'dexie';
import { replicaDatabase } from '../replica/replicaName';
import { openRecords } from './openRecords';
import { openVideos } from './openVideos';
import { openSenderKeys } from './senderKeys';
import type { Shelves } from './shelves';
import { openBucket, storageBuckets } from './storageBuckets';
import { explainStorage, storageProblem } from './storageProblem';
import { videosFolder } from './worker/videoFolder';

/** Database of the shelf that earlier versions had; of the others, where there are no buckets, with their number. */
const databaseName = 'overfoot';
const shelfName = (shelf: number) => (shelf === 0 ? databaseName : `${databaseName}-${shelf}`);
const folderOf = (shelf: number) => (shelf === 0 ? videosFolder : `${videosFolder}-${shelf}`);

/**
 * The shelves of this browser: each a storage bucket of its own, which the browser removes from the disk as a
 * whole; where there are no buckets, a database and a folder of videos.
 */
export function browserShelves(buckets = storageBuckets()): Shelves {
  const bucketOf = (shelf: number) => (buckets === null || shelf === 0 ? null : shelfName(shelf));
  return {
    leavesNothing: buckets !== null,
    async list() {
      if (typeof indexedDB === 'undefined') throw storageProblem('unsupported');
      try {
        const names = await Dexie.getDatabaseNames();
        return shelfNumbers(
          buckets === null
            ? names
            : [...names.filter((name) => name === databaseName), ...(await buckets.keys())],
        );
      } catch (error) {
        throw explainStorage(error);
      }
    },
    async openRecords(shelf) {
      const bucket = bucketOf(shelf);
      if (bucket === null) return openRecords(shelfName(shelf));
      try {
        const { indexedDB } = await openBucket(bucket);
        return await openRecords(databaseName, { indexedDB, IDBKeyRange });
      } catch (error) {
        throw explainStorage(error);
      }
    },
    openVideos: (shelf) => {
      const bucket = bucketOf(shelf);
      return openVideos({ bucket, folder: bucket === null ? folderOf(shelf) : videosFolder });
    },
    async storageOf(shelf) {
      const bucket = bucketOf(shelf);
      return bucket === null ? navigator.storage : openBucket(bucket);
    },
    async forgetRest() {
      await openSenderKeys().forgetAll();
      await Dexie.delete(replicaDatabase);
    },
    async remove(shelf) {
      const bucket = bucketOf(shelf);
      try {
        if (bucket !== null) return await buckets!.delete(bucket);
        await Dexie.delete(shelfName(shelf));
        await removeFolder(folderOf(shelf));
      } catch (error) {
        throw explainStorage(error);
      }
    },
  };
}

function shelfNumbers(names: readonly string[]): number[] {
  return names
    .flatMap((name) => {
      const [, digits = null] = /^overfoot(?:-([1-9]\d{0,8}))?$/.exec(name) ?? [null, null];
      return name === databaseName ? [0] : digits === null ? [] : [Number(digits)];
    })
    .sort((a, b) => a - b);
}

async function removeFolder(folder: string): Promise<void> {
  try {
    const root = await navigator.storage.getDirectory();
    await root.removeEntry(folder, { recursive: true });
  } catch (error) {
    if (!(error instanceof DOMException && error.name === 'NotFoundError')) throw error;
  }
}
