import { loadReady, writeReady } from './lock/storedLock';
import type { Records } from './records';
import type { Shelves } from './shelves';
import type { Tabs } from './tabs';

/**
 * Opens the records of the shelf in use: the newest that is complete. The others are what is left of a copy
 * that was interrupted before or after it was complete; they are removed. Where there is none, one is made.
 *
 * @throws StorageProblem  refused, a private window, written by a newer version, ...
 */
export async function findShelf(shelves: Shelves, tabs: Tabs): Promise<{ shelf: number; records: Records }> {
  const numbers = await shelves.list();
  const first = numbers[0];
  if (first === undefined) {
    const records = await shelves.openRecords(1);
    await writeReady(records, null);
    return { shelf: 1, records };
  }
  let used: { shelf: number; records: Records } | null = null;
  for (const shelf of numbers.toReversed()) {
    const records = await shelves.openRecords(shelf);
    if (shelf === first || (await loadReady(records)) !== null) {
      used = { shelf, records };
      break;
    }
    records.close();
  }
  const { shelf, records } = used!;
  const left = numbers.filter((number) => number !== shelf);
  // Where another tab is open, a later opening does it.
  if (left.length > 0)
    await tabs
      .alone(async () => {
        for (const number of left) await shelves.remove(number);
      })
      .catch(() => undefined);
  return { shelf, records };
}
