import type { RecordChange, Records, TableName } from '../records';
import { storageProblem } from '../storageProblem';
import type { Cipher } from './cipher';
import { bytesOfRecord, recordOfBytes } from './recordBytes';

/** A record as stored in a locked database; its key stays readable, and reveals only an id. */
export interface SealedRecord {
  sealed: Uint8Array<ArrayBuffer>;
}

/** Records that can't be read in the database without the key. Those not sealed yet are read as they are. */
export function createSealedRecords(inner: Records, cipher: Cipher): Records {
  const open = async (table: TableName, key: string, value: unknown) =>
    isSealed(value) ? openRecord(cipher, table, key, value) : value;
  const seal = async (change: RecordChange): Promise<RecordChange> =>
    'put' in change
      ? { ...change, value: await sealRecord(cipher, change.put, change.key, change.value) }
      : 'replace' in change
        ? { ...change, value: await sealRecord(cipher, change.replace, change.key, change.value) }
        : change;
  return {
    get: async (table, key) => open(table, key, await inner.get(table, key)),
    keys: (table) => inner.keys(table),
    async list(table, prefix) {
      const found = await inner.list(table, prefix);
      return Promise.all(
        found.map(async ({ key, value }) => ({ key, value: await open(table, key, value) })),
      );
    },
    // Everything is sealed before the transaction begins: a transaction must not wait for anything else.
    apply: async (changes) => inner.apply(await Promise.all(changes.map(seal))),
    close: () => inner.close(),
  };
}

export function isSealed(value: unknown): value is SealedRecord {
  return typeof value === 'object' && value !== null && 'sealed' in value && ArrayBuffer.isView(value.sealed);
}

export async function sealRecord(
  cipher: Cipher,
  table: TableName,
  key: string,
  value: unknown,
): Promise<SealedRecord> {
  return { sealed: await cipher.seal(bytesOfRecord(value), placeOf(table, key)) };
}

/** @throws StorageProblem  'damaged' */
export async function openRecord(
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
