import { storageProblem } from '../storageProblem';

/**
 * The device's key, sealed by a passphrase in the open age format (scrypt, then ChaCha20-Poly1305).
 *
 * @param scryptWorkFactor  log2 of the cost of trying a passphrase; age's default if left out
 */
export async function wrapKey(
  key: Uint8Array,
  passphrase: string,
  scryptWorkFactor?: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const { Encrypter } = await import('age-encryption'); // Large, and few devices are locked.
  const encrypter = new Encrypter();
  encrypter.setPassphrase(passphrase);
  if (scryptWorkFactor !== undefined) encrypter.setScryptWorkFactor(scryptWorkFactor);
  return (await encrypter.encrypt(key)) as Uint8Array<ArrayBuffer>;
}

/** @throws StorageProblem  'wrong-passphrase' */
export async function unwrapKey(wrapped: Uint8Array, passphrase: string): Promise<Uint8Array<ArrayBuffer>> {
  const { Decrypter } = await import('age-encryption');
  const decrypter = new Decrypter();
  decrypter.addPassphrase(passphrase);
  try {
    return (await decrypter.decrypt(wrapped)) as Uint8Array<ArrayBuffer>;
  } catch (error) {
    throw storageProblem('wrong-passphrase', error);
  }
}
