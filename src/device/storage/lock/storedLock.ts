import { z } from '#documents/schema/zod';
import type { Records } from '../records';
import { storageProblem } from '../storageProblem';

/**
 * The lock as stored in the database. 'sealing' and 'opening' give the direction of the work that the next
 * unlocking has to do. Until it is done, some of what is kept is sealed and some is not.
 */
const storedLockSchema = z.strictObject({
  state: z.enum(['sealing', 'sealed', 'opening']),
  /** The device's key, sealed by the passphrase: an age file. */
  sealedKey: z.instanceof(Uint8Array),
});
export type StoredLock = z.infer<typeof storedLockSchema>;

const key = 'lock';

/**
 * @returns  null where the device is not locked
 * @throws StorageProblem  'damaged'
 */
export async function loadLock(records: Records): Promise<StoredLock | null> {
  const value = await records.get('lock', key);
  if (value === undefined) return null;
  const result = storedLockSchema.safeParse(value);
  if (!result.success) throw storageProblem('damaged', result.error);
  return result.data;
}

/** @param lock  null removes the lock */
export async function writeLock(records: Records, lock: StoredLock | null): Promise<void> {
  await records.apply([lock === null ? { remove: 'lock', key } : { put: 'lock', key, value: lock }]);
}
