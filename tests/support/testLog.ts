import type { Repository } from '#device/storage/repository';
import type { DeviceSigner } from '#shell/deviceSigner';
import { createSignedLog, type SignedLog } from '#shell/signedLog';
import { newSigningPair, publicHalf, sign } from '#shell/signing';

/** What signs on a device of its own. */
export async function testSigner(): Promise<DeviceSigner> {
  const pair = await newSigningPair();
  const key = await publicHalf(pair);
  return { key, sign: async (bytes) => ({ key, signature: await sign(pair, bytes) }) };
}

/** The log of a device, on which AB works. */
export function testLog(repository: Repository, signer: DeviceSigner | null = null): SignedLog {
  return createSignedLog({
    openRepository: () => Promise.resolve({ repository, problem: null }),
    initials: () => Promise.resolve('AB'),
    signer: () => Promise.resolve(signer),
    newId: () => crypto.randomUUID(),
    now: () => new Date('2026-04-12T08:00:00.000Z'),
  });
}
