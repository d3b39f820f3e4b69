import type { RecordChange, Records, TableName } from '../records';
import { storageProblem } from '../storageProblem';
import type { Cipher } from './cipher';
import { bytesOfRecord, recordOfBytes } from './recordBytes';

/** A record as stored in a locked database; its key stays readable, and reveals only an id. */
export interface SealedRecord {
  sealed: Uint8Array<ArrayBuffer>;
}

/**
 * Records that can't be read in the database without the key. One that is not sealed was not written by this
 * program while the lock was on, and is refused as damaged.
 *
 * @param isMixed  whether plain ones are to be read as well, as earlier versions left them
 */
export function createSealedRecords(inner: Records, cipher: Cipher, isMixed = false): Records {
  const open = async (table: TableName, key: string, value: unknown) => {
    if (isSealed(value)) return openRecord(cipher, table, key, value);
    if (value === undefined || isMixed) return value;
    throw storageProblem('damaged');
  };
  const seal = async (change: RecordChange): Promise<RecordChange> =>
    'put' in change
      ? { ...change, value: await sealRecord(cipher, change.put, change.key, change.value) }
      : 'replace' in change
        ? { ...change, value: await sealRecord(cipher, change.replace, change.key, change.value) }
        : change;
  return {
    get: async (table, key) => open(table, key, await inner.get(table, key)),
    async find(table, key) {
      const found = await inner.find(table, key);
      return found === null ? null : { ...found, value: await open(table, key, found.value) };
    },
    keys: (table) => inner.keys(table),
    async list(table, prefix) {
      const found = await inner.list(table, prefix);
      // One that is damaged does not block the others.
      const opened = ({ key, value }: { key: string; value: unknown }) =>
        open(table, key, value).catch((error: unknown) => error);
      return Promise.all(found.map(async (one) => ({ ...one, value: await opened(one) })));
    },
    // Everything is sealed before the transaction begins: a transaction must not wait for anything else.
    apply: async (changes) => inner.apply(await Promise.all(changes.map(seal))),
    close: () => inner.close(),
  };
}

function isSealed(value: unknown): value is SealedRecord {
  return typeof value === 'object' && value !== null && 'sealed' in value && ArrayBuffer.isView(value.sealed);
}

async function sealRecord(
  cipher: Cipher,
  table: TableName,
  key: string,
  value: unknown,
): Promise<SealedRecord> {
  return { sealed: await cipher.seal(bytesOfRecord(value), placeOf(table, key)) };
}

/** @throws StorageProblem  'damaged' */
async function openRecord(
  cipher: Cipher,
  table: TableName,
  key: string,
  { sealed }: SealedRecord,
): Promise<unknown> {
  try {
    return recordOfBytes(await cipher.open(sealed, placeOf(table, key)));
  } catch (error) {
    throw storageProblem('damaged', error);
  }
}

function placeOf(table: TableName, key: string): string {
  return `${table} ${key}`;
}
