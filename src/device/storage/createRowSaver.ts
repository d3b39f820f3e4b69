import { createQueue } from '#core/createQueue';
import type { TimedRow } from '#core/keypoints/keypointTrack';
import { packRows } from './jointRows';
import type { Records } from './records';
import { explainStorage, type StorageProblem } from './storageProblem';

/** No row waits longer than this before it is on its way to storage, ms. */
const keepWithinMs = 500;

/** Takes rows as they come and stores them in blocks. */
export interface RowSaver {
  /** Times must increase; a row out of order is dropped, since it could never be read back. */
  add(timed: TimedRow): void;
  /** Resolves once everything added so far is kept. */
  flush(): Promise<void>;
  /** Takes no more rows, and discards those still queued. */
  stop(): void;
}

/**
 * @param owner  the owner of the rows; the key of each block starts with it
 * @param kept  how many of its blocks there are already, and the time of the last row in them, ms
 * @param onProblem  called every time that rows could not be kept; they are retried with the next ones
 */
export function createRowSaver(
  records: Records,
  owner: string,
  kept: { blocks: number; lastMs: number },
  onProblem: (problem: StorageProblem) => void,
): RowSaver {
  let { blocks, lastMs } = kept;
  let waiting: TimedRow[] = [];
  let timer: ReturnType<typeof setTimeout> | undefined;
  const writes = createQueue();
  let stopped = false;

  const write = async () => {
    if (waiting.length === 0 || stopped) return;
    const block = waiting;
    waiting = [];
    try {
      await records.apply([{ put: 'rows', key: rowKey(owner, blocks), value: packRows(block) }]);
      blocks++;
    } catch (error) {
      waiting = [...block, ...waiting];
      throw explainStorage(error);
    }
  };
  const flush = () => {
    clearTimeout(timer);
    timer = undefined;
    return writes.add(write);
  };

  return {
    add(timed) {
      if (stopped || !(timed.timeMs > lastMs)) return;
      lastMs = timed.timeMs;
      waiting.push(timed);
      timer ??= setTimeout(() => flush().catch(onProblem), keepWithinMs);
    },
    flush,
    stop() {
      stopped = true;
      clearTimeout(timer);
    },
  };
}

/** Key of a block; sorts by number. */
export function rowKey(owner: string, block: number): string {
  return `${owner}/${String(block).padStart(8, '0')}`;
}
