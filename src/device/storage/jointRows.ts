import { keypointCount } from '#core/keypoints/keypointNames';
import type { TimedRow } from '#core/keypoints/keypointTrack';
import { storageProblem } from './storageProblem';

const valuesInRow = keypointCount * 3;

/** Rows that were kept together, as stored. */
export interface RowBlock {
  timesMs: Float64Array;
  /** 1 where a person was found. */
  found: Uint8Array;
  /** x, y (px) and score of 33 points a frame, interleaved; 0 where nobody was found. */
  values: Float32Array;
}

export function packRows(rows: readonly TimedRow[]): RowBlock {
  const block: RowBlock = {
    timesMs: Float64Array.from(rows, ({ timeMs }) => timeMs),
    found: Uint8Array.from(rows, ({ row }) => (row === null ? 0 : 1)),
    values: new Float32Array(rows.length * valuesInRow),
  };
  rows.forEach(({ row }, index) => {
    if (row !== null) block.values.set(row, index * valuesInRow);
  });
  return block;
}

/**
 * Rows of kept blocks, in order.
 *
 * @param blocks  as read from storage, unchecked
 * @throws StorageProblem  'damaged' where something is not a block or times run backwards
 */
export function unpackRows(blocks: readonly unknown[]): TimedRow[] {
  const rows: TimedRow[] = [];
  for (const block of blocks) {
    if (!isBlock(block)) throw storageProblem('damaged');
    block.timesMs.forEach((timeMs, index) => {
      if (!(timeMs > (rows.at(-1)?.timeMs ?? -1))) throw storageProblem('damaged');
      const row = block.values.slice(index * valuesInRow, (index + 1) * valuesInRow);
      rows.push({ timeMs, row: block.found[index] === 1 ? row : null });
    });
  }
  return rows;
}

function isBlock(block: unknown): block is RowBlock {
  if (typeof block !== 'object' || block === null) return false;
  const { timesMs, found, values } = block as Partial<Record<keyof RowBlock, unknown>>;
  return (
    timesMs instanceof Float64Array &&
    found instanceof Uint8Array &&
    values instanceof Float32Array &&
    found.length === timesMs.length &&
    values.length === timesMs.length * valuesInRow
  );
}
