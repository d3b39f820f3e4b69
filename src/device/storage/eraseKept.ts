import { tableNames, type Records } from './records';
import type { Videos } from './videos';

/** Deletes everything that is kept, in every table and among the videos. */
export async function eraseKept(records: Records, videos: Videos): Promise<void> {
  await records.apply(tableNames.map((table) => ({ remove: table, key: '', andBelow: true })));
  for (const { name } of await videos.list()) await videos.remove(name);
}
