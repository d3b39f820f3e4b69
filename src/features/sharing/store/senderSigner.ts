import type { SenderKeys } from '#device/storage/senderKeys';
import { newSigningPair, publicHalf, sign } from '#shell/signing';
import type { SendingWorld } from './createSending';

/** Signs the sessions of each plan with a key of its own, which is made when it is first asked for. */
export function senderSigner(keys: SenderKeys): SendingWorld['signerFor'] {
  return async (planId) => {
    try {
      let pair = await keys.find(planId);
      if (pair === null) {
        pair = await newSigningPair();
        await keys.keep(planId, pair);
      }
      const key = await publicHalf(pair);
      return { key, sign: async (line) => ({ key, signature: await sign(pair, line) }) };
    } catch {
      return null; // Pages over http have no such keys, and private windows may not keep them.
    }
  };
}
