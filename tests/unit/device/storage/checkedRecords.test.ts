import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { openRecords } from '#device/storage/openRecords';
import { openRepository } from '#device/storage/openRepository';
import { smallRecording } from '../../../support/smallRecording';
import { smallSession } from '../../../support/smallSession';
import { createTestShelves } from '../../../support/testShelves';

const recording = smallRecording();
const session = smallSession();
const other = { ...session, id: 'ab0e8a58-2d6e-4a57-8f3e-3f1d7c8b2a11' };
const damaged = { reason: 'damaged' };

/** A device on whose disk a value can change without the program. */
async function openDevice() {
  const indexedDB = new IDBFactory();
  const { repository } = await openRepository({
    ...createTestShelves(),
    openRecords: () => openRecords('overfoot', { indexedDB, IDBKeyRange }),
  });
  const inStore = <Value>(table: string, act: (store: IDBObjectStore) => IDBRequest<Value>) =>
    new Promise<Value>((resolve, reject) => {
      const opening = indexedDB.open('overfoot');
      opening.onerror = () => reject(opening.error!);
      opening.onsuccess = () => {
        const database = opening.result;
        const asked = act(database.transaction(table, 'readwrite').objectStore(table));
        asked.onerror = () => reject(asked.error!);
        asked.onsuccess = () => {
          database.close();
          resolve(asked.result);
        };
      };
    });
  return {
    repository,
    async change(table: string, key: string, change: (value: never) => void) {
      const row = await inStore<{ key: string; value: never }>(table, (store) => store.get(key) as never);
      change(row.value);
      await inStore(table, (store) => store.put(row));
    },
    read: (table: string, key: string) => inStore<unknown>(table, (store) => store.get(key) as never),
  };
}

describe('a kept record of which something changed on the disk', () => {
  it('is set aside and shown, though it would pass for whole, and the rest stays usable', async () => {
    const { repository, change, read } = await openDevice();
    await repository.sessions.save(session);
    await repository.sessions.save(other);
    await repository.recordings.save(recording, { visitId: session.id, video: null, fromVideo: 'done' });
    await change('visits', session.id, (value: { painAfter: number }) => (value.painAfter = 9));
    expect(await repository.sessions.list()).toEqual({
      found: [other],
      unreadable: [{ id: session.id, sentence: expect.stringMatching(/can’t be read/) as string }],
    });
    await expect(repository.sessions.find(session.id)).rejects.toMatchObject(damaged);
    expect(await read('visits', session.id)).toMatchObject({ value: { painAfter: 9 } });
    expect((await repository.recordings.find(recording.id))!.recording).toEqual(recording);
  });

  it('is noticed in joints of which a single one moved', async () => {
    const { repository, change } = await openDevice();
    await repository.recordings.save(recording, { visitId: null, video: null, fromVideo: 'done' });
    await change(
      'rows',
      `session:${recording.id}/joints`,
      (value: { xPx: number[] }) => (value.xPx[7]! += 1),
    );
    await expect(repository.recordings.find(recording.id)).rejects.toMatchObject(damaged);
    expect(await repository.recordings.findHead(recording.id)).not.toBeNull();
  });

  it('is noticed in facts and plans, one by one', async () => {
    const { repository, change } = await openDevice();
    await repository.recordings.save(recording, { visitId: null, video: null, fromVideo: 'done' });
    await repository.plans.save('plan', '{"patient":"Grey Otter 3"}');
    await repository.plans.save('another', '{}');
    await change('facts', recording.id, (value: { side: string }) => (value.side = 'left'));
    await change('plans', 'plan', (value: { text: string }) => (value.text = '{"patient":"Blue Heron 7"}'));
    expect((await repository.recordings.list()).unreadable).toMatchObject([{ id: recording.id }]);
    const plans = await repository.plans.list();
    expect(plans.unreadable).toMatchObject([{ id: 'plan' }]);
    expect(plans.found).toMatchObject([{ id: 'another' }]);
  });
});
