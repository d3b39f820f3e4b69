import { Dexie } from 'dexie';
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { createMemoryRecords } from '#device/storage/memoryRecords';
import { databaseVersion, openRecords } from '#device/storage/openRecords';
import type { Records } from '#device/storage/records';

const kinds: [string, () => Promise<Records>][] = [
  ['openRecords()', () => openRecords('overfoot', { indexedDB: new IDBFactory(), IDBKeyRange })],
  ['createMemoryRecords()', () => Promise.resolve(createMemoryRecords())],
];

describe.each(kinds)('%s', (_, open) => {
  it('gives back what was put, typed arrays too, and undefined for what was not', async () => {
    const records = await open();
    const value = { timesMs: Float64Array.of(1.5, 2.25), name: 'heron' };
    await records.apply([{ put: 'rows', key: 'a/1', value }]);
    expect(await records.get('rows', 'a/1')).toEqual(value);
    expect(await records.get('rows', 'a/2')).toBeUndefined();
    expect(await records.get('plans', 'a/1')).toBeUndefined();
  });

  it('keeps a copy: what is done to the value afterwards does not reach it', async () => {
    const records = await open();
    const value = { count: 1 };
    await records.apply([{ put: 'plans', key: 'a', value }]);
    value.count = 2;
    const first = (await records.get('plans', 'a')) as { count: number };
    first.count = 3;
    expect(await records.get('plans', 'a')).toEqual({ count: 1 });
  });

  it('lists in the order of the keys, those with a prefix alone where asked', async () => {
    const records = await open();
    await records.apply(['b/1', 'a/2', 'a/1', 'ab'].map((key) => ({ put: 'rows', key, value: key })));
    expect((await records.list('rows')).map(({ value }) => value)).toEqual(['a/1', 'a/2', 'ab', 'b/1']);
    expect((await records.list('rows', 'a/')).map(({ key }) => key)).toEqual(['a/1', 'a/2']);
    expect(await records.keys('rows')).toEqual(['a/1', 'a/2', 'ab', 'b/1']);
  });

  it('removes one, or all whose keys start the same', async () => {
    const records = await open();
    await records.apply(['a/1', 'a/2', 'b/1', 'b/2'].map((key) => ({ put: 'rows', key, value: 1 })));
    await records.apply([
      { remove: 'rows', key: 'a/', andBelow: true },
      { remove: 'rows', key: 'b/1' },
      { remove: 'rows', key: 'b/' },
    ]);
    expect((await records.list('rows')).map(({ key }) => key)).toEqual(['b/2']);
  });

  it('does all or nothing where a record to be replaced is gone', async () => {
    const records = await open();
    await records.apply([{ put: 'plans', key: 'a', value: 1 }]);
    await expect(
      records.apply([
        { put: 'plans', key: 'b', value: 2 },
        { remove: 'plans', key: 'a' },
        { replace: 'plans', key: 'gone', value: 3 },
      ]),
    ).rejects.toMatchObject({ name: 'StorageProblem', reason: 'missing' });
    expect((await records.list('plans')).map(({ key }) => key)).toEqual(['a']);
    await records.apply([{ replace: 'plans', key: 'a', value: 4 }]);
    expect(await records.get('plans', 'a')).toBe(4);
  });
});

describe.each(kinds)('%s, with what is expected', (_, open) => {
  it('gives another edition with every change of the content, and the same to the same content', async () => {
    const records = await open();
    const [first] = await records.apply([{ put: 'plans', key: 'a', value: { count: 1 } }]);
    expect(await records.find('plans', 'a')).toEqual({ value: { count: 1 }, edition: first });
    const [second] = await records.apply([{ put: 'plans', key: 'a', value: { count: 2 } }]);
    expect(second).not.toBe(first);
    expect(await records.apply([{ put: 'plans', key: 'a', value: { count: 1 } }])).toEqual([first]);
    expect(await records.find('plans', 'b')).toBeNull();
  });

  it('does all or nothing where another edition is there than expected', async () => {
    const records = await open();
    const [first] = await records.apply([{ put: 'plans', key: 'a', value: 1 }]);
    const changed = { name: 'StorageProblem', reason: 'changed' };
    await records.apply([{ replace: 'plans', key: 'a', value: 2, expects: first! }]);
    for (const late of [
      { replace: 'plans', key: 'a', value: 3, expects: first! },
      { put: 'plans', key: 'a', value: 3, expects: null },
      { put: 'plans', key: 'c', value: 3, expects: first! },
    ] as const)
      await expect(records.apply([{ put: 'plans', key: 'b', value: 4 }, late])).rejects.toMatchObject(
        changed,
      );
    expect((await records.list('plans')).map(({ key, value }) => [key, value])).toEqual([['a', 2]]);
    await records.apply([{ put: 'plans', key: 'c', value: 5, expects: null }]);
    expect(await records.get('plans', 'c')).toBe(5);
  });
});

describe('openRecords(name, options)', () => {
  it('finds again what was kept before', async () => {
    const indexedDB = new IDBFactory();
    const first = await openRecords('overfoot', { indexedDB, IDBKeyRange });
    await first.apply([{ put: 'plans', key: 'a', value: 'kept' }]);
    first.close();
    const second = await openRecords('overfoot', { indexedDB, IDBKeyRange });
    expect(await second.get('plans', 'a')).toBe('kept');
  });

  const ofVersion1 = ['visits', 'sessions', 'facts', 'plans', 'sets', 'tracking', 'rows'] as const;
  it.each([
    [1, ofVersion1],
    [3, [...ofVersion1, 'notes', 'lock', 'patients', 'digests']],
  ] as const)(
    'brings a database of version %i up: everything in it stays, and the new tables are there',
    async (version, tables) => {
      const indexedDB = new IDBFactory();
      // As that version wrote it, by the database's own means.
      await new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('overfoot', version * 10);
        opening.onupgradeneeded = () => {
          for (const table of tables)
            opening.result
              .createObjectStore(table, { keyPath: 'key' })
              .add({ key: 'a', value: { of: table, timesMs: Float64Array.of(1.5) } });
        };
        opening.onerror = () => reject(opening.error!);
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
      });
      const records = await openRecords('overfoot', { indexedDB, IDBKeyRange });
      for (const table of tables)
        expect(await records.list(table)).toEqual([
          { key: 'a', edition: '', value: { of: table, timesMs: Float64Array.of(1.5) } },
        ]);
      await records.apply([
        { put: 'notes', key: 'draft', value: 'kept' },
        { put: 'replica', key: 'settings', value: 'kept' },
      ]);
      records.close();
      const again = await openRecords('overfoot', { indexedDB, IDBKeyRange });
      expect(await again.get('notes', 'draft')).toBe('kept');
      expect(await again.get('replica', 'settings')).toBe('kept');
    },
  );

  it('says of a database that a newer program wrote that the page must be reloaded, and leaves it as it is', async () => {
    const indexedDB = new IDBFactory();
    const newer = new Dexie('overfoot', { indexedDB, IDBKeyRange });
    newer.version(databaseVersion + 1).stores({ plans: 'key', somethingNew: 'key' });
    await newer.table('plans').put({ key: 'a', value: 'newer' });
    newer.close();
    await expect(openRecords('overfoot', { indexedDB, IDBKeyRange })).rejects.toMatchObject({
      reason: 'newer',
    });
    const again = await new Dexie('overfoot', { indexedDB, IDBKeyRange }).open();
    expect(await again.table('plans').get('a')).toEqual({ key: 'a', value: 'newer' });
  });

  it('gives way to a newer program in another tab, and says so from then on', async () => {
    const indexedDB = new IDBFactory();
    const records = await openRecords('overfoot', { indexedDB, IDBKeyRange });
    await records.apply([{ put: 'plans', key: 'a', value: 1 }]);
    const newer = new Dexie('overfoot', { indexedDB, IDBKeyRange });
    newer.version(databaseVersion + 1).stores({ plans: 'key', somethingNew: 'key' });
    await newer.open();
    expect(await newer.table('plans').count()).toBe(1);
    await expect(records.get('plans', 'a')).rejects.toMatchObject({ reason: 'other-tab' });
  });

  it('says that there is no database where the browser has none', async () => {
    const none = { indexedDB: undefined, IDBKeyRange: undefined } as never;
    await expect(openRecords('overfoot', none)).rejects.toMatchObject({ reason: 'unsupported' });
  });
});
