import { describe, expect, it } from 'vitest';
import { isSignedBy, newSigningPair, publicHalf, sign } from '#shell/signing';

const text = new TextEncoder().encode('a line');

describe('sign(pair, bytes), isSignedBy(key, signature, bytes)', () => {
  it('belong to one key and to exactly these bytes', async () => {
    const [pair, other] = [await newSigningPair(), await newSigningPair()];
    const [key, signature] = [await publicHalf(pair), await sign(pair, text)];
    expect(await isSignedBy(key, signature, text)).toBe(true);
    expect(await isSignedBy(await publicHalf(other), signature, text)).toBe(false);
    expect(await isSignedBy(key, signature, new TextEncoder().encode('a lime'))).toBe(false);
    expect(await isSignedBy(key, 'no signature', text)).toBe(false);
    expect(await isSignedBy('no key', signature, text)).toBe(false);
  });

  it('come from a key that can’t be read', async () => {
    const { privateKey } = await newSigningPair();
    await expect(crypto.subtle.exportKey('pkcs8', privateKey)).rejects.toThrow();
  });
});
