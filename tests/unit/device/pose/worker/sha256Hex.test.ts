import { expect, it } from 'vitest';
import { sha256Hex } from '#device/pose/worker/sha256Hex';

const bytesOf = (text: string) => new TextEncoder().encode(text).buffer;

it.each([
  // FIPS 180-4, examples by NIST: one block and two blocks; and the digest of nothing.
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
])('gives the published digest of "%s", by the browser and without its help', async (text, digest) => {
  expect(await sha256Hex(bytesOf(text))).toBe(digest);
  expect(await sha256Hex(bytesOf(text), null)).toBe(digest);
});
