import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tableFault } from '#device/frames/tableFault';
import { projectRoot } from '#tools/commands/tools/projectRoot';

const u32 = (...values: number[]) => {
  const view = new DataView(new ArrayBuffer(4 * values.length));
  values.forEach((value, at) => view.setUint32(4 * at, value));
  return new Uint8Array(view.buffer);
};
const box = (type: string, ...content: Uint8Array[]): Uint8Array<ArrayBuffer> => {
  const length = content.reduce((sum, part) => sum + part.length, 8);
  const bytes = new Uint8Array(length);
  bytes.set(u32(length));
  bytes.set(new TextEncoder().encode(type), 4);
  let at = 8;
  for (const part of content) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
};
const handler = (type: string) => box('hdlr', u32(0, 0), new TextEncoder().encode(type), u32(0, 0, 0));
/** A file with one track whose tables are these. */
const film = (tables: Uint8Array[], type = 'vide') =>
  new Blob([
    box('ftyp', u32(0)),
    box('moov', box('trak', box('mdia', handler(type), box('minf', box('stbl', ...tables))))),
  ]);
const none = u32(0);

describe('tableFault(file)', () => {
  it.each(['example.mp4', 'short.mp4', 'mpeg4-part2.mp4'])('finds nothing in %s', async (name) => {
    expect(await tableFault(new Blob([readFileSync(`${projectRoot}fixtures/${name}`)]))).toBeNull();
  });

  it.each([
    ['stsz', u32(0, 0, 1e7)],
    ['stsz', u32(0, 0, 0xffffffff)],
    ['stts', u32(0, 2 ** 31)],
    ['ctts', u32(0, 1e7)],
    ['stco', u32(0, 100)],
    ['stz2', u32(0, 16, 1e9)],
  ])('notices entries of %s for which there is no room (%#)', async (type, content) => {
    expect(await tableFault(film([box(type, content)]))).toBe('more-than-it-holds');
  });

  it.each([
    ['stsz', u32(0, 500, 2 ** 31)],
    ['stts', u32(0, 1, 2 ** 31, 1)],
    ['ctts', u32(0, 2, 60_000, 0, 60_000, 0)],
  ])(
    'notices more frames in %s than can be measured, though they take no room (%#)',
    async (type, content) => {
      expect(await tableFault(film([box(type, content)]))).toBe('too-many-frames');
    },
  );

  it('notices them in a fragment', async () => {
    const fragment = box('moof', box('traf', box('trun', none, u32(2 ** 31))));
    expect(await tableFault(new Blob([box('ftyp', none), fragment]))).toBe('too-many-frames');
  });

  it('lets sound have its many samples', async () => {
    const tables = [box('stsz', u32(0, 4, 48_000 * 1800)), box('stts', u32(0, 1, 48_000 * 1800, 1))];
    expect(await tableFault(film(tables, 'soun'))).toBeNull();
    expect(await tableFault(film(tables, 'vide'))).toBe('too-many-frames');
  });

  it('follows boxes in boxes no deeper than tables stand', async () => {
    let nested = box('moov');
    for (let depth = 0; depth < 2000; depth++) nested = box('moov', nested);
    expect(await tableFault(new Blob([nested]))).toBe('more-than-it-holds');
  });

  it('ends with an answer whatever the bytes are', async () => {
    const good = new Uint8Array(readFileSync(`${projectRoot}fixtures/short.mp4`)).slice(0, 40_000);
    await fc.assert(
      fc.asyncProperty(fc.nat(good.length - 1), fc.nat(255), async (at, byte) => {
        const changed = good.slice();
        changed[at] = byte;
        expect([null, 'more-than-it-holds', 'too-many-frames']).toContain(
          await tableFault(new Blob([changed])),
        );
      }),
      { numRuns: 100 },
    );
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 200 }), async (bytes) => {
        await tableFault(new Blob([bytes as Uint8Array<ArrayBuffer>]));
      }),
    );
  });
});
