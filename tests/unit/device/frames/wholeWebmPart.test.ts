import { describe, expect, it } from 'vitest';
import { wholeWebmPart } from '#device/frames/wholeWebmPart';

/** Size as 8 bytes whose bits are all set: unknown. */
const unknown = [0x01, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff];
const header = [0x1a, 0x45, 0xdf, 0xa3, 0x83, 1, 2, 3];
const segment = [0x18, 0x53, 0x80, 0x67, ...unknown];
const info = [0x15, 0x49, 0xa9, 0x66, 0x82, 7, 7];
const cluster = [0x1f, 0x43, 0xb6, 0x75, ...unknown];
const clusterTime = [0xe7, 0x81, 5];
/** A picture of 300 bytes; its size in two: 0x40 | 1, 0x2c. */
const picture = [0xa3, 0x41, 0x2c, ...Array.from({ length: 300 }, () => 9)];
const start = [...header, ...segment, ...info];

const file = (...parts: number[][]) =>
  new File([Uint8Array.from(parts.flat())], 'set.webm', { type: 'video/webm' });
const sizeAfter = async (given: File) => (await wholeWebmPart(given)).size;

describe('wholeWebmPart(file)', () => {
  it('gives the same file where nothing is cut off', async () => {
    const whole = file(start, cluster, clusterTime, picture, picture, cluster, clusterTime, picture);
    expect(await wholeWebmPart(whole)).toBe(whole);
  });

  it('cuts back to the last whole picture, wherever it was cut off', async () => {
    const before = [...start, ...cluster, ...clusterTime, ...picture];
    const bytes = [...before, ...picture];
    for (let length = before.length + 1; length < bytes.length; length++) {
      expect(await sizeAfter(file(bytes.slice(0, length)))).toBe(before.length);
    }
    expect(await sizeAfter(file(bytes))).toBe(bytes.length);
    const cut = await wholeWebmPart(file(bytes.slice(0, -1)));
    expect([cut.name, cut.type]).toEqual(['set.webm', 'video/webm']);
    expect([...new Uint8Array(await cut.arrayBuffer())]).toEqual(before);
  });

  it('cuts back to the end of a cluster where the head of the next one is cut', async () => {
    const before = [...start, ...cluster, ...clusterTime, ...picture];
    expect(await sizeAfter(file(before, cluster.slice(0, 6)))).toBe(before.length);
    expect(await sizeAfter(file(before, cluster, clusterTime, picture.slice(0, 100)))).toBe(
      before.length + cluster.length + clusterTime.length,
    );
  });

  it('finds its way over more than one window of reading', async () => {
    // 5 MB in one picture: 0x10 | 0, and 0x4c4b40 in three bytes.
    const large = new Uint8Array(5 + 5_000_000);
    large.set([0xa3, 0x10, 0x4c, 0x4b, 0x40]);
    const bytes = Uint8Array.from([...start, ...cluster, ...clusterTime]);
    const cut = new File([bytes, large, large, Uint8Array.from(picture.slice(0, 7))], 'set.webm');
    expect(await sizeAfter(cut)).toBe(bytes.length + 2 * large.length);
  });

  it.each([
    ['an empty file', file([])],
    ['something else', new File(['ftypisom, and so on'], 'a.mp4')],
    ['a header alone', file(header)],
    ['a header that is cut', file(header.slice(0, 5))],
    ['a file cut before its first picture', file(start.slice(0, -3))],
    ['clusters that tell their size', file(start, [0x1f, 0x43, 0xb6, 0x75, 0x8a, ...clusterTime])],
  ])('leaves %s as it is', async (_, given) => {
    expect(await wholeWebmPart(given)).toBe(given);
  });
});
