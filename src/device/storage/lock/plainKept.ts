import { createCheckedRecords } from '../checkedRecords';
import type { Records } from '../records';
import type { Kept } from '../shelves';
import type { CopiedKept } from './copyKept';

/**
 * What is kept on a shelf without a lock, compared with its checksums. Sealed records need none: the seal shows
 * any change. A damaged record is copied under a mark that no reader takes for a record: the copy has a checksum
 * of its own, and would pass for whole.
 */
export function plainKept({ records, videos }: Kept): CopiedKept {
  const marked: Records = {
    ...records,
    get: async (table, key) => ({ damaged: await records.get(table, key) }),
  };
  return { records: createCheckedRecords(records), videos, raw: { records: marked, videos } };
}
