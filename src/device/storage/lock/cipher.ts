/** Seals bytes with the device's key, and opens them: AES-256 in Galois/Counter Mode (NIST SP 800-38D). */
export interface Cipher {
  /**
   * @param place  where the bytes belong: they can't be opened anywhere else
   * @returns  12 bytes of nonce, then the sealed bytes with their 16-byte tag
   */
  seal(bytes: Uint8Array<ArrayBuffer>, place: string): Promise<Uint8Array<ArrayBuffer>>;
  /** @throws  where they were changed, belong elsewhere, or are sealed with another key */
  open(sealed: Uint8Array<ArrayBuffer>, place: string): Promise<Uint8Array<ArrayBuffer>>;
}

const nonceBytes = 12;
/** What sealing adds to each piece, bytes. */
export const sealBytes = nonceBytes + 16;

const keyBytes = 32;

export function newKey(): Uint8Array<ArrayBuffer> {
  return crypto.getRandomValues(new Uint8Array(keyBytes));
}

/** @param key  32 bytes */
export async function createCipher(key: Uint8Array<ArrayBuffer>): Promise<Cipher> {
  const aes = await crypto.subtle.importKey('raw', key, 'AES-GCM', false, ['encrypt', 'decrypt']);
  const settings = (nonce: Uint8Array<ArrayBuffer>, place: string) => ({
    name: 'AES-GCM',
    iv: nonce,
    additionalData: new TextEncoder().encode(place),
  });
  return {
    async seal(bytes, place) {
      // Random: among 2^32 pieces under one key, two equal nonces are less likely than 2^-32 (SP 800-38D, 8.3).
      const nonce = crypto.getRandomValues(new Uint8Array(nonceBytes));
      const sealed = await crypto.subtle.encrypt(settings(nonce, place), aes, bytes);
      const whole = new Uint8Array(nonceBytes + sealed.byteLength);
      whole.set(nonce);
      whole.set(new Uint8Array(sealed), nonceBytes);
      return whole;
    },
    async open(sealed, place) {
      const nonce = sealed.slice(0, nonceBytes);
      return new Uint8Array(
        await crypto.subtle.decrypt(settings(nonce, place), aes, sealed.subarray(nonceBytes)),
      );
    },
  };
}
