import { tableNames, type RecordChange, type TableName } from '../records';
import type { Kept } from '../shelves';
import { StorageProblem } from '../storageProblem';
import { writeVideo } from '../videos';

/** A shelf to be copied; `raw` is what is copied of what is damaged. */
export interface CopiedKept extends Kept {
  raw?: Kept;
}

/** Records that are written at once: few enough for the memory, and enough not to wait for the disk all the time. */
const together = 8;

/** Everything except the lock itself. */
const copiedTables = tableNames.filter((table) => table !== 'lock');

/**
 * Copies everything, with no more than a few records or one video in memory. What is damaged is copied as it lies
 * there, and marked, so that it is reported where it is listed.
 *
 * @param onProgress  called with how many of the records and videos are done
 */
export async function copyKept(
  from: CopiedKept,
  to: Kept,
  onProgress: (done: number, total: number) => void,
): Promise<void> {
  const videos = await from.videos.list();
  const tables: { table: TableName; keys: string[] }[] = [];
  for (const table of copiedTables) tables.push({ table, keys: await from.records.keys(table) });
  const total = tables.reduce((count, { keys }) => count + keys.length, videos.length);
  let done = 0;
  for (const { table, keys } of tables) {
    for (let at = 0; at < keys.length; at += together) {
      const changes: RecordChange[] = [];
      for (const key of keys.slice(at, at + together)) {
        const value = await from.records.get(table, key).catch(async (error: unknown) => ({
          damaged: await orRaw(error, () => from.raw?.records.get(table, key)),
        }));
        changes.push({ put: table, key, value });
      }
      await to.records.apply(changes);
      onProgress((done += changes.length), total);
    }
  }
  for (const { name } of videos) {
    const video = await from.videos
      .read(name)
      .catch((error: unknown) => orRaw(error, () => from.raw?.videos.read(name)));
    if (video !== null) await writeVideo(to.videos, name, video);
    onProgress(++done, total);
  }
}

async function orRaw<Value>(error: unknown, readRaw: () => Promise<Value> | undefined): Promise<Value> {
  const raw = error instanceof StorageProblem && error.reason === 'damaged' ? readRaw() : undefined;
  if (raw === undefined) throw error;
  return raw;
}
