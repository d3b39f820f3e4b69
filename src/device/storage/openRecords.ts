import { group } from 'd3-array';
import { Dexie, type DexieOptions, type Table } from 'dexie';
import { inTime } from '../inTime';
import { checksumOf } from './checksumOf';
import { createTogether } from './createTogether';
import { tableOf, type KeptRecord, type RecordChange, type Records, type TableName } from './records';
import { refuseToChange } from './refuseToChange';
import { explainStorage, storageProblem } from './storageProblem';

interface Row {
  key: string;
  value: unknown;
  /** The value's checksum when it was written, which is its edition. */
  sum?: string;
}

/**
 * Bump when a table is added or removed. Records carry their own version and are migrated on read, so a
 * document from a file and a kept one take the same path.
 */
export const databaseVersion = 4;

/** The tables added with each version. */
const tablesSince: Record<number, readonly TableName[]> = {
  1: ['visits', 'sessions', 'facts', 'plans', 'sets', 'tracking', 'rows'],
  2: ['notes', 'lock'],
  3: ['patients', 'digests'],
  4: ['replica'],
};

/**
 * Records in the browser's database.
 *
 * @param options  other databases than the browser's own, for tests
 * @throws StorageProblem  refused, a private window, written by a newer version, ...
 */
export async function openRecords(name = 'overfoot', options: DexieOptions = {}): Promise<Records> {
  // 'strict': a record has reached the disk when its promise resolves, so that an empty battery can't take it.
  const database = new Dexie(name, { chromeTransactionDurability: 'strict', autoOpen: false, ...options });
  for (const [version, tables] of Object.entries(tablesSince))
    database.version(Number(version)).stores(Object.fromEntries(tables.map((table) => [table, 'key'])));
  // A newer version of the program in another tab takes precedence; calls in this one then fail with a
  // sentence.
  database.on('versionchange', () => database.close());
  await database.open().catch((error: unknown) => Promise.reject(explainStorage(error)));
  // Dexie opens what a newer version wrote, and this program would then write into it without knowing its
  // format. Its version numbers are multiplied by ten.
  if (Math.floor(database.backendDB().version / 10) > databaseVersion) {
    database.close();
    throw storageProblem('newer');
  }
  const table = (name: TableName): Table<Row, string> => database.table(name);
  const read = createTogether((name: TableName, keys: string[]) => table(name).bulkGet(keys));

  return {
    get: (name, key) => guarded(async () => (await read(name, key))?.value),
    find: (name, key) =>
      guarded(async () => {
        const row = await read(name, key);
        return row === undefined ? null : keptRecord(row);
      }),
    keys: (name) => guarded(() => table(name).toCollection().primaryKeys()),
    list: (name, prefix = '') =>
      guarded(async () =>
        (await table(name).where(':id').startsWith(prefix).toArray()).map((row) => ({
          key: row.key,
          ...keptRecord(row),
        })),
      ),
    apply: (changes) =>
      guarded(() => {
        // A transaction must not wait for anything else.
        const sums = changes.map((change) => ('value' in change ? checksumOf(change.value) : ''));
        return database.transaction('rw', [...new Set(changes.map(tableOf))], async () => {
          await checkAll(changes, (name, keys) => table(name).bulkGet(keys));
          // Asked for at once, done in this order.
          await Promise.all(changes.map((change, at) => applyTo(table(tableOf(change)), change, sums[at]!)));
          return sums;
        });
      }),
    close: () => database.close(),
  };
}

function keptRecord({ value, sum = '' }: Row): KeptRecord {
  return { value, edition: sum };
}

/** Refuses changes that are not meant for what is there; one request a table, however many there are. */
async function checkAll(
  changes: readonly RecordChange[],
  read: (name: TableName, keys: string[]) => PromiseLike<(Row | undefined)[]>,
): Promise<void> {
  const checked = changes.filter((change) => change.expects !== undefined || 'replace' in change);
  await Promise.all(
    [...group(checked, tableOf)].map(async ([name, ofTable]) => {
      const rows = await read(
        name,
        ofTable.map(({ key }) => key),
      );
      ofTable.forEach((change, at) => {
        const row = rows[at];
        refuseToChange(change, row === undefined ? null : keptRecord(row).edition);
      });
    }),
  );
}

function applyTo(table: Table<Row, string>, change: RecordChange, sum: string): PromiseLike<unknown> {
  const { key } = change;
  if ('value' in change) return table.put({ key, value: change.value, sum });
  return change.andBelow === true ? table.where(':id').startsWith(key).delete() : table.delete(key);
}

/** No reading or writing takes this long where the database answers at all, ms. */
const answersWithinMs = 30_000;

async function guarded<Value>(work: () => PromiseLike<Value>): Promise<Value> {
  try {
    return await inTime(Promise.resolve(work()), answersWithinMs, () => storageProblem('silent'));
  } catch (error) {
    throw explainStorage(error);
  }
}
