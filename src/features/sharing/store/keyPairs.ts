import { Problem } from '#core/problem';
import { z } from '#documents/schema/zod';
import type { KeyPair } from '#shell/seal';

const keyPairsSchema = z.array(z.object({ identity: z.string(), recipient: z.string() }));

/**
 * The keys that are kept, the one in use first.
 *
 * @param text  as it is kept; null where there are none
 * @throws Problem  where there are some that can't be read: no other key may then be written over them
 */
export function parseKeyPairs(text: string | null): KeyPair[] {
  if (text === null) return [];
  try {
    return keyPairsSchema.parse(JSON.parse(text));
  } catch (cause) {
    throw new Problem(
      'storage',
      'The keys kept on this device can’t be read, and were left as they are. Restore the key from its backup, or restore a backup of everything.',
      { cause },
    );
  }
}
