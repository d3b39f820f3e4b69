import { tableNames, type Records, type TableName } from './records';
import { storageProblem } from './storageProblem';

/** Records in memory, lost with the tab, for a browser that keeps nothing. */
export function createMemoryRecords(): Records {
  const tables = new Map(tableNames.map((name) => [name, new Map<string, unknown>()]));
  const table = (name: TableName) => tables.get(name)!;
  return {
    get: (name, key) => Promise.resolve(structuredClone(table(name).get(key))),
    keys: (name) => Promise.resolve([...table(name).keys()].sort()),
    list: (name, prefix = '') =>
      Promise.resolve(
        [...table(name)]
          .filter(([key]) => key.startsWith(prefix))
          .sort(([a], [b]) => (a < b ? -1 : 1))
          .map(([key, value]) => ({ key, value: structuredClone(value) })),
      ),
    // Atomic: there is no await in it.
    async apply(changes) {
      for (const change of changes) {
        if ('replace' in change && !table(change.replace).has(change.key)) throw storageProblem('missing');
      }
      for (const change of changes) {
        if ('put' in change) table(change.put).set(change.key, structuredClone(change.value));
        else if ('replace' in change) table(change.replace).set(change.key, structuredClone(change.value));
        else if (change.andBelow !== true) table(change.remove).delete(change.key);
        else {
          const below = table(change.remove);
          for (const key of [...below.keys()]) if (key.startsWith(change.key)) below.delete(key);
        }
      }
    },
    close: () => undefined,
  };
}
