import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { digestDifferences, folderDigests } from '#tools/commands/tools/folderDigests';

it('finds every file by its path, and its SHA-256', () => {
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-digests-'));
  try {
    mkdirSync(join(folder, 'inner'));
    writeFileSync(join(folder, 'inner/abc.txt'), 'abc');
    writeFileSync(join(folder, 'empty'), '');
    // FIPS 180-4, example by NIST, and the digest of nothing.
    expect([...folderDigests(folder)]).toEqual([
      ['empty', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
      ['inner/abc.txt', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

it('names what differs, and nothing where nothing does', () => {
  const one = new Map([
    ['a', '1'],
    ['b', '2'],
    ['c', '3'],
  ]);
  const other = new Map([
    ['b', '2'],
    ['c', '4'],
    ['d', '5'],
  ]);
  expect(digestDifferences(one, one)).toEqual([]);
  expect(digestDifferences(one, other)).toEqual([
    'a: only in the first',
    'c: other bytes',
    'd: only in the second',
  ]);
});
