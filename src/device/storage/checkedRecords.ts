import { checksumOf } from './checksumOf';
import type { Records } from './records';
import { storageProblem } from './storageProblem';

/**
 * Records that are compared with their checksums as they are read. A damaged one stays where it is: `get`
 * throws 'damaged' for it, and a list gives the problem in place of its value. Records from before there were
 * checksums are read as they are.
 */
export function createCheckedRecords(inner: Records): Records {
  const isWhole = ({ value, edition }: { value: unknown; edition: string }) =>
    edition === '' || checksumOf(value) === edition;
  const find: Records['find'] = async (table, key) => {
    const found = await inner.find(table, key);
    if (found !== null && !isWhole(found)) throw storageProblem('damaged');
    return found;
  };
  return {
    ...inner,
    find,
    get: async (table, key) => (await find(table, key))?.value,
    async list(table, prefix) {
      const found = await inner.list(table, prefix);
      return found.map((one) => (isWhole(one) ? one : { ...one, value: storageProblem('damaged') }));
    },
  };
}
