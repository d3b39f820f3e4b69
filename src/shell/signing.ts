import { fromBase64Url, toBase64Url } from '#documents/plan/base64Url';

/** ECDSA on the curve P-256 with SHA-256: what every browser can do with keys that never leave it. */
const algorithm = { name: 'ECDSA', namedCurve: 'P-256' };
const signing = { name: 'ECDSA', hash: 'SHA-256' };

/** A key pair that signs; its private half can be used on this device, but not read. */
export type SigningPair = CryptoKeyPair;

export function newSigningPair(): Promise<SigningPair> {
  return crypto.subtle.generateKey(algorithm, false, ['sign', 'verify']);
}

/** @returns  the public half: 65 bytes, base64url */
export async function publicHalf({ publicKey }: SigningPair): Promise<string> {
  return toBase64Url(new Uint8Array(await crypto.subtle.exportKey('raw', publicKey)));
}

/** @returns  the signature: 64 bytes, base64url */
export async function sign({ privateKey }: SigningPair, bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  return toBase64Url(new Uint8Array(await crypto.subtle.sign(signing, privateKey, bytes)));
}

/**
 * @param key  as publicHalf() gives it
 * @param signature  as sign() gives it
 * @returns  whether the holder of the key signed exactly these bytes
 */
export async function isSignedBy(
  key: string,
  signature: string,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<boolean> {
  const [raw, signed] = [fromBase64Url(key), fromBase64Url(signature)];
  if (raw === null || signed === null) return false;
  try {
    const opened = await crypto.subtle.importKey('raw', raw.slice(), algorithm, false, ['verify']);
    return await crypto.subtle.verify(signing, opened, signed.slice(), bytes);
  } catch {
    return false; // No point of the curve.
  }
}
