import { Problem } from '#core/problem';
import { z } from '../schema/zod';
import { askAgain } from './parcelManifest';

/**
 * Who signed a parcel's first line: an ECDSA key on the curve P-256 and its signature with SHA-256, both as raw
 * bytes in base64url (65 bytes: the uncompressed point; 64 bytes: r and s).
 */
const senderSchema = z
  .strictObject({
    key: z.string().regex(/^[\w-]{87}$/),
    signature: z.string().regex(/^[\w-]{86}$/),
  })
  .nullable();
export type ParcelSender = NonNullable<z.infer<typeof senderSchema>>;

/**
 * Reads a parcel's second line, which is untrusted.
 *
 * @returns  null where the device that sent it could not sign
 * @throws Problem  where it is something else
 */
export function readSender(line: string, whatNext = askAgain): ParcelSender | null {
  try {
    return senderSchema.parse(JSON.parse(line));
  } catch {
    throw new Problem('file', `Its signature is damaged. ${whatNext}`);
  }
}
