import { z } from '#documents/schema/zod';
import type { RecordChange, Records } from '../records';
import { storageProblem } from '../storageProblem';
import type { Cipher } from './cipher';

/** A key, sealed by the passphrase: an age file. */
const sealedKey = z.instanceof(Uint8Array);
/** Sealed nothing, which opens with the key and for this step alone: so nobody else can have written the step. */
const proof = z.instanceof(Uint8Array);

/** The lock of a shelf as stored on it. All steps but 'sealed' say what the next unlocking has to do. */
const storedLockSchema = z.discriminatedUnion('step', [
  /** On a plain shelf: it is to be sealed with this key. `startsEmpty`: what is on it is to be deleted instead. */
  z.strictObject({ step: z.literal('sealing'), sealedKey, startsEmpty: z.boolean() }),
  z.strictObject({ step: z.literal('sealed'), sealedKey, proof }),
  /** It is to be opened for good. */
  z.strictObject({ step: z.literal('opening'), sealedKey, proof }),
  /** It is to be sealed with this key; the one it is sealed with now is itself sealed with this one. */
  z.strictObject({ step: z.literal('changing'), sealedKey, earlierKey: z.instanceof(Uint8Array) }),
]);
/** What earlier versions stored, on the one shelf that they had: sealed and plain records lie side by side there. */
const earlierLockSchema = z
  .strictObject({ state: z.enum(['sealing', 'sealed', 'opening']), sealedKey })
  .transform(({ state, sealedKey }) => ({ step: 'earlier' as const, state, sealedKey }));
const lockSchema = z.union([storedLockSchema, earlierLockSchema]);

export type StoredLock = z.infer<typeof storedLockSchema>;
export type FoundLock = z.infer<typeof lockSchema>;

const lockKey = 'lock';
/** Next to the lock: that everything on this shelf has arrived, and how. */
const readyKey = 'ready';
export type Ready = 'plain' | 'sealed';

/**
 * @returns  null where the shelf is not locked
 * @throws StorageProblem  'damaged'
 */
export async function loadLock(records: Records): Promise<FoundLock | null> {
  const value = await records.get('lock', lockKey);
  if (value === undefined) return null;
  const result = lockSchema.safeParse(value);
  if (!result.success) throw storageProblem('damaged', result.error);
  return result.data;
}

/** @param lock  null removes the lock */
export async function writeLock(records: Records, lock: StoredLock | null): Promise<void> {
  await records.apply([
    lock === null ? { remove: 'lock', key: lockKey } : { put: 'lock', key: lockKey, value: lock },
  ]);
}

/** Null where something may be missing on the shelf. */
export async function loadReady(records: Records): Promise<Ready | null> {
  const value = await records.get('lock', readyKey);
  return value === 'plain' || value === 'sealed' ? value : null;
}

/** Marks a shelf as complete, with its lock, at once. */
export async function writeReady(records: Records, lock: StoredLock | null): Promise<void> {
  const locking: RecordChange[] = lock === null ? [] : [{ put: 'lock', key: lockKey, value: lock }];
  const ready: Ready = lock === null ? 'plain' : 'sealed';
  await records.apply([...locking, { put: 'lock', key: readyKey, value: ready }]);
}

type Proven = 'sealed' | 'opening';

export function proveStep(cipher: Cipher, step: Proven): Promise<Uint8Array<ArrayBuffer>> {
  return cipher.seal(new Uint8Array(), placeOf(step));
}

/** @throws StorageProblem  'lock-changed' where the step was not written with the key */
export async function checkStep(cipher: Cipher, step: Proven, proof: Uint8Array): Promise<void> {
  try {
    await cipher.open(proof.slice(), placeOf(step));
  } catch (error) {
    throw storageProblem('lock-changed', error);
  }
}

function placeOf(step: Proven): string {
  return `lock ${step}`;
}
