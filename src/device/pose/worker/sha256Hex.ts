import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/**
 * SHA-256 of some megabytes, in hexadecimal letters. The browser's own is many times faster than one in JavaScript, but is
 * missing in pages that came neither over https nor from this device.
 *
 * @param subtle  the browser's own; null where it is missing
 */
export async function sha256Hex(
  bytes: ArrayBuffer,
  subtle: SubtleCrypto | null = crypto.subtle ?? null,
): Promise<string> {
  const digest =
    subtle === null ? sha256(new Uint8Array(bytes)) : new Uint8Array(await subtle.digest('SHA-256', bytes));
  return bytesToHex(digest);
}
