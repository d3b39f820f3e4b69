import { describe, expect, it } from 'vitest';
import { packRows, unpackRows } from '#device/storage/jointRows';
import { smallRecordingParts } from '../../../support/smallRecording';
import { rowsOf } from '../../../support/smallSet';

const rows = rowsOf(smallRecordingParts().track).slice(0, 8);

describe('unpackRows(packRows(rows))', () => {
  it('gives the same rows, over any number of blocks, with nobody where nobody was', () => {
    expect(rows[3]!.row).toBeNull();
    expect(unpackRows([packRows(rows)])).toEqual(rows);
    expect(unpackRows([packRows(rows.slice(0, 3)), packRows([]), packRows(rows.slice(3))])).toEqual(rows);
    expect(unpackRows([])).toEqual([]);
  });

  it.each<[string, unknown[]]>([
    ['no block', [null]],
    ['other arrays', [{ ...packRows(rows), timesMs: rows.map(({ timeMs }) => timeMs) }]],
    ['values that are missing', [{ ...packRows(rows), values: new Float32Array(99) }]],
    ['marks that are missing', [{ ...packRows(rows), found: new Uint8Array(1) }]],
    ['a block twice', [packRows(rows), packRows(rows)]],
    ['a time that is none', [packRows([{ timeMs: NaN, row: null }])]],
  ])('refuses %s', (_, blocks) => {
    expect(() => unpackRows(blocks)).toThrow(expect.objectContaining({ reason: 'damaged' }));
  });
});
