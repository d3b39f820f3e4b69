import { eraseKept } from '../eraseKept';
import { tableNames, type Records, type TableName } from '../records';
import { explainStorage, StorageProblem } from '../storageProblem';
import type { Videos } from '../videos';
import { createCipher, type Cipher } from './cipher';
import type { DeviceLock } from './createDeviceLock';
import { createSealedRecords, isSealed, openRecord, sealRecord } from './sealedRecords';
import { createSealedVideos, sealVideos, unsealVideos } from './sealedVideos';
import { writeLock, type StoredLock } from './storedLock';
import { unwrapKey } from './wrapKey';

/** A device whose lock is on, before the passphrase is entered. */
export interface LockedDevice {
  /**
   * Opens it, and finishes what turning the lock on or off left to do.
   *
   * @param onProgress  called with how many of the records and videos are done
   * @throws StorageProblem  'wrong-passphrase'
   */
  unlock(passphrase: string, onProgress: (done: number, total: number) => void): Promise<void>;
  /** Deletes everything that is kept, and the lock: for somebody who has lost the passphrase. */
  eraseAll(): Promise<void>;
}

interface Kept {
  records: Records;
  videos: Videos;
}

/**
 * @returns  what is kept, to be read and written as if there were no lock; a problem where the work could not
 * be finished
 */
export async function openLocked(
  plain: Kept,
  stored: StoredLock,
  lock: DeviceLock,
  ask: (device: LockedDevice) => Promise<void>,
): Promise<Kept & { lockProblem: StorageProblem | null }> {
  let opened: Kept = plain;
  let lockProblem: StorageProblem | null = null;
  await ask({
    async unlock(passphrase, onProgress) {
      const cipher = await createCipher(await unwrapKey(stored.sealedKey, passphrase));
      opened = {
        records: createSealedRecords(plain.records, cipher),
        videos: createSealedVideos(plain.videos, cipher, stored.state === 'opening'),
      };
      if (stored.state === 'sealed') return;
      try {
        await lock.assertAlone();
        await (stored.state === 'sealing' ? sealAll : openAll)(plain, cipher, onProgress);
        await writeLock(plain.records, stored.state === 'sealing' ? { ...stored, state: 'sealed' } : null);
        if (stored.state === 'opening') opened = plain;
      } catch (error) {
        lockProblem = explainStorage(error); // Both kinds can be read; the rest is done the next time.
      }
    },
    eraseAll: () => eraseKept(plain.records, plain.videos),
  });
  return { ...opened, lockProblem };
}

/** Everything except the lock itself. */
const sealedTables = tableNames.filter((table) => table !== 'lock');

type Work = (plain: Kept, cipher: Cipher, onProgress: (done: number, total: number) => void) => Promise<void>;

const sealAll: Work = async (plain, cipher, onProgress) => {
  const step = await counter(plain, onProgress);
  await eachRecord(plain.records, step, async (table, key, value) =>
    isSealed(value) ? null : sealRecord(cipher, table, key, value),
  );
  await sealVideos(plain.videos, cipher, step);
};

const openAll: Work = async (plain, cipher, onProgress) => {
  const step = await counter(plain, onProgress);
  await eachRecord(plain.records, step, async (table, key, value) =>
    // Damaged records stay: they are reported where they are listed, and would otherwise keep the lock on for
    // ever.
    isSealed(value) ? openRecord(cipher, table, key, value).catch(() => null) : null,
  );
  await unsealVideos(plain.videos, cipher, step);
};

/** Rewrites records one by one, so that no more than one is in memory; null leaves a record unchanged. */
async function eachRecord(
  records: Records,
  step: () => void,
  rewrite: (table: TableName, key: string, value: unknown) => Promise<unknown>,
): Promise<void> {
  for (const table of sealedTables) {
    for (const key of await records.keys(table)) {
      const value = await rewrite(table, key, await records.get(table, key));
      if (value !== null) await records.apply([{ replace: table, key, value }]);
      step();
    }
  }
}

async function counter(
  { records, videos }: Kept,
  onProgress: (done: number, total: number) => void,
): Promise<() => void> {
  let total = (await videos.list()).length;
  for (const table of sealedTables) total += (await records.keys(table)).length;
  let done = 0;
  return () => onProgress(++done, total);
}
