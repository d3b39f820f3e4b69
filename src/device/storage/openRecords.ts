import { Dexie, type DexieOptions, type Table } from 'dexie';
import type { RecordChange, Records, TableName } from './records';
import { explainStorage, storageProblem } from './storageProblem';

interface Row {
  key: string;
  value: unknown;
}

/**
 * Bump when a table is added or removed. Records carry their own version and are migrated on read, so a
 * document from a file and a kept one take the same path.
 */
export const databaseVersion = 2;

/** The tables added with each version. */
const tablesSince: Record<number, readonly TableName[]> = {
  1: ['visits', 'sessions', 'facts', 'plans', 'sets', 'tracking', 'rows'],
  2: ['notes', 'lock'],
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
  await guarded(() => database.open());
  // Dexie opens what a newer version wrote, and this program would then write into it without knowing its
  // format. Its version numbers are multiplied by ten.
  if (Math.floor(database.backendDB().version / 10) > databaseVersion) {
    database.close();
    throw storageProblem('newer');
  }
  const table = (name: TableName): Table<Row, string> => database.table(name);

  return {
    get: (name, key) => guarded(async () => (await table(name).get(key))?.value),
    keys: (name) => guarded(() => table(name).toCollection().primaryKeys()),
    list: (name, prefix = '') => guarded(() => table(name).where(':id').startsWith(prefix).toArray()),
    apply: (changes) =>
      guarded(() =>
        database.transaction('rw', [...new Set(changes.map(tableOf))], async () => {
          for (const change of changes) await applyTo(table(tableOf(change)), change);
        }),
      ),
    close: () => database.close(),
  };
}

function tableOf(change: RecordChange): TableName {
  return 'put' in change ? change.put : 'replace' in change ? change.replace : change.remove;
}

async function applyTo(table: Table<Row, string>, change: RecordChange): Promise<void> {
  const { key } = change;
  if ('remove' in change) {
    if (change.andBelow === true) await table.where(':id').startsWith(key).delete();
    else await table.delete(key);
    return;
  }
  if ('replace' in change && (await table.where(':id').equals(key).count()) === 0) {
    throw storageProblem('missing');
  }
  await table.put({ key, value: change.value });
}

async function guarded<Value>(work: () => PromiseLike<Value>): Promise<Value> {
  try {
    return await work();
  } catch (error) {
    throw explainStorage(error);
  }
}
