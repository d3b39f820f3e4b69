import { checksumOf } from './checksumOf';
import { tableNames, tableOf, type KeptRecord, type Records, type TableName } from './records';
import { refuseToChange } from './refuseToChange';

/** Records in memory, lost with the tab, for a browser that keeps nothing. */
export function createMemoryRecords(): Records {
  const tables = new Map(tableNames.map((name) => [name, new Map<string, KeptRecord>()]));
  const table = (name: TableName) => tables.get(name)!;
  const find = (name: TableName, key: string) => structuredClone(table(name).get(key) ?? null);
  return {
    get: (name, key) => Promise.resolve(find(name, key)?.value),
    find: (name, key) => Promise.resolve(find(name, key)),
    keys: (name) => Promise.resolve([...table(name).keys()].sort()),
    list: (name, prefix = '') =>
      Promise.resolve(
        [...table(name)]
          .filter(([key]) => key.startsWith(prefix))
          .sort(([a], [b]) => (a < b ? -1 : 1))
          .map(([key, kept]) => ({ key, ...structuredClone(kept) })),
      ),
    // Atomic: there is no await in it.
    async apply(changes) {
      for (const change of changes)
        refuseToChange(change, table(tableOf(change)).get(change.key)?.edition ?? null);
      return changes.map((change) => {
        const { key } = change;
        const of = table(tableOf(change));
        if ('value' in change) {
          const edition = checksumOf(change.value);
          of.set(key, { value: structuredClone(change.value), edition });
          return edition;
        }
        if (change.andBelow !== true) of.delete(key);
        else for (const below of [...of.keys()]) if (below.startsWith(key)) of.delete(below);
        return '';
      });
    },
    close: () => undefined,
  };
}
