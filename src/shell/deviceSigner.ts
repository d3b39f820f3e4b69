import type { SenderKeys } from '#device/storage/senderKeys';
import type { ParcelSender } from '#documents/parcel/parcelSender';
import { newSigningPair, publicHalf, sign } from './signing';

/** In the place of a plan's id: one key signs all that a therapist's device hands over or notes of who did what. */
export const practiceKeyName = 'hand-over';

/** What signs on this device, and the public half of its key. */
export interface DeviceSigner {
  key: string;
  sign(bytes: Uint8Array<ArrayBuffer>): Promise<ParcelSender>;
}

/**
 * Signs by keys of this device: one for the sessions of each plan, and one for the practice. Each is made when it is
 * first asked for.
 *
 * @returns  gives null where this device can't sign
 */
export function deviceSigner(keys: SenderKeys): (name: string) => Promise<DeviceSigner | null> {
  return async (name) => {
    try {
      let pair = await keys.find(name);
      if (pair === null) {
        pair = await newSigningPair();
        await keys.keep(name, pair);
      }
      const key = await publicHalf(pair);
      return { key, sign: async (bytes) => ({ key, signature: await sign(pair, bytes) }) };
    } catch {
      return null; // Pages over http have no such keys, and private windows may not keep them.
    }
  };
}
