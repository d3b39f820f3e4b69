import { x25519 } from '@noble/curves/ed25519.js';
import { hkdf } from '@noble/hashes/hkdf.js';
import { hmac } from '@noble/hashes/hmac.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { bech32 } from '@scure/base';
import { toBase64Url } from '#documents/plan/base64Url';
import type { KeyPair } from './seal';

const info = utf8ToBytes('overfoot-shared-1');
/** Working one out takes far longer than marking. */
const secrets = new Map<string, Uint8Array>();

/**
 * Marks with which somebody who holds a private key shows, to the holder of another one and nobody else, that these bytes
 * come from them: HMAC-SHA-256 under a key that only the two can work out (X25519 of one's private and the other's public
 * key, then HKDF with both public keys, sender first). This is what HPKE's authenticated mode rests on (RFC 9180, 5.1.3),
 * without its one-time key: the sealing has that. Both keys are those whose words were compared.
 *
 * @param sender  public key of who marks
 * @param recipient  public key of who checks
 * @param own  the key pair of one of the two
 * @returns  32 bytes, base64url
 */
export function markFor(sender: string, recipient: string, own: KeyPair, bytes: Uint8Array): string {
  return toBase64Url(hmac(sha256, secretOf(sender, recipient, own), bytes));
}

/** @throws Error  where a key is none, or one of the few that give the same secret with every other */
function secretOf(sender: string, recipient: string, own: KeyPair): Uint8Array {
  const name = `${own.identity} ${sender} ${recipient}`;
  const known = secrets.get(name);
  if (known !== undefined) return known;
  const other = sender === own.recipient ? recipient : sender;
  const shared = x25519.getSharedSecret(keyBytes(own.identity.toLowerCase()), keyBytes(other));
  const secret = hkdf(sha256, shared, concatBytes(keyBytes(sender), keyBytes(recipient)), info, 32);
  secrets.set(name, secret);
  return secret;
}

function keyBytes(key: string): Uint8Array {
  return bech32.decodeToBytes(key).bytes;
}
