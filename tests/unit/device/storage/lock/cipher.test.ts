import { describe, expect, it } from 'vitest';
import { createCipher, sealBytes } from '#device/storage/lock/cipher';

const key = Uint8Array.from({ length: 32 }, (_, index) => index);
const text = (words: string) => new Uint8Array(new TextEncoder().encode(words));

describe('createCipher(key)', () => {
  it('gives back what was sealed, and two seals of the same differ', async () => {
    const cipher = await createCipher(key);
    const [one, other] = [await cipher.seal(text('knee'), 'a'), await cipher.seal(text('knee'), 'a')];
    expect(one.length).toBe(text('knee').length + sealBytes);
    expect(one).not.toEqual(other);
    expect(await cipher.open(one, 'a')).toEqual(text('knee'));
  });

  it('opens what the cipher’s authors give as an example', async () => {
    // McGrew and Viega, The Galois/Counter Mode of Operation, test case 14: key, nonce and text are all zero; values
    // from memory.
    const sealedHex = `${'00'.repeat(12)}cea7403d4d606b6e074ec5d3baf39d18d0d1c8a799996bf0265b98b5d48ab919`;
    const cipher = await createCipher(new Uint8Array(32));
    expect(await cipher.open(new Uint8Array(Buffer.from(sealedHex, 'hex')), '')).toEqual(new Uint8Array(16));
  });

  it.each([
    ['at another place', (sealed: Uint8Array<ArrayBuffer>) => ({ sealed, place: 'b', by: key })],
    [
      'with a changed byte',
      (sealed: Uint8Array<ArrayBuffer>) => ({
        sealed: sealed.map((byte, at) => (at === 13 ? byte ^ 1 : byte)),
        place: 'a',
        by: key,
      }),
    ],
    [
      'with another key',
      (sealed: Uint8Array<ArrayBuffer>) => ({ sealed, place: 'a', by: key.map((byte) => byte ^ 1) }),
    ],
    [
      'cut short',
      (sealed: Uint8Array<ArrayBuffer>) => ({ sealed: sealed.slice(0, 20), place: 'a', by: key }),
    ],
  ])('does not open %s', async (_, change) => {
    const { sealed, place, by } = change(await (await createCipher(key)).seal(text('knee'), 'a'));
    await expect((await createCipher(by)).open(sealed, place)).rejects.toThrow();
  });
});
