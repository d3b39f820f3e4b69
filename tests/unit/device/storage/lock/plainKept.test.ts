import { describe, expect, it } from 'vitest';
import { createRepository } from '#device/storage/createRepository';
import { createCipher, newKey } from '#device/storage/lock/cipher';
import { copyKept } from '#device/storage/lock/copyKept';
import { plainKept } from '#device/storage/lock/plainKept';
import { createSealedRecords } from '#device/storage/lock/sealedRecords';
import { createMemoryRecords } from '#device/storage/memoryRecords';
import { createMemoryVideos } from '#device/storage/memoryVideos';
import type { Records } from '#device/storage/records';
import { storageProblem } from '#device/storage/storageProblem';
import { smallSession } from '../../../../support/smallSession';

const session = smallSession();
const other = { ...session, id: 'ab0e8a58-2d6e-4a57-8f3e-3f1d7c8b2a11' };

/** A shelf on whose disk one value of the first session changed without the program. */
async function spoiltShelf() {
  const records = createMemoryRecords();
  await records.apply([session, other].map((one) => ({ put: 'visits', key: one.id, value: one })));
  const spoil = (value: unknown, key: string) =>
    key === session.id ? { ...(value as typeof session), painAfter: 9 } : value;
  const spoilt: Records = {
    ...records,
    get: async (table, key) => spoil(await records.get(table, key), key),
    async find(table, key) {
      const found = await records.find(table, key);
      return found === null ? null : { ...found, value: spoil(found.value, key) };
    },
  };
  return { records: spoilt, videos: createMemoryVideos() };
}

describe('plainKept(kept)', () => {
  it.each(['plain', 'sealed'] as const)(
    'is copied to a shelf that is %s without taking a damaged record for whole',
    async (kind) => {
      const shelf = { records: createMemoryRecords(), videos: createMemoryVideos() };
      const to =
        kind === 'plain'
          ? plainKept(shelf)
          : { ...shelf, records: createSealedRecords(shelf.records, await createCipher(newKey())) };
      await copyKept(plainKept(await spoiltShelf()), to, () => undefined);
      const { sessions } = createRepository({ ...to, lasting: { records: true, videos: true } });
      expect(await sessions.list()).toMatchObject({ found: [other], unreadable: [{ id: session.id }] });
    },
  );

  it('is not copied where a record is not damaged, but can’t be read now', async () => {
    const { records, videos } = await spoiltShelf();
    const find = () => Promise.reject(storageProblem('other-tab'));
    const to = plainKept({ records: createMemoryRecords(), videos: createMemoryVideos() });
    const copying = copyKept(plainKept({ records: { ...records, find }, videos }), to, () => undefined);
    await expect(copying).rejects.toMatchObject({ reason: 'other-tab' });
  });
});
