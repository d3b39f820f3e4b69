import { describe, expect, it, vi } from 'vitest';
import { createTimelyShelves } from '#device/storage/createTimelyShelves';
import { createMemoryRecords } from '#device/storage/memoryRecords';
import { createMemoryVideos } from '#device/storage/memoryVideos';
import { openRepository } from '#device/storage/openRepository';
import type { Records } from '#device/storage/records';
import type { Shelves } from '#device/storage/shelves';
import { storageProblem } from '#device/storage/storageProblem';
import { smallRecording } from '../../../support/smallRecording';
import { smallSession } from '../../../support/smallSession';
import { smallSetStart } from '../../../support/smallSet';
import { createTestShelves } from '../../../support/testShelves';

const named = (name: string) => Object.assign(new Error('from the browser'), { name });
const memory: Shelves = {
  leavesNothing: true,
  list: () => Promise.resolve([]),
  openRecords: () => Promise.resolve(createMemoryRecords()),
  openVideos: () => Promise.resolve(createMemoryVideos()),
  storageOf: () => Promise.resolve(undefined),
  remove: () => Promise.resolve(),
  forgetRest: () => Promise.resolve(),
};

describe('openRepository(shelves)', () => {
  it('says that all outlasts the tab where both kinds of storage open', async () => {
    const { repository, problem } = await openRepository(memory);
    expect(problem).toBeNull();
    expect(repository.lasting).toEqual({ records: true, videos: true });
  });

  it('works on in memory where storage is refused, and says that nothing outlasts the tab, and why', async () => {
    const { repository, problem } = await openRepository({
      ...memory,
      openRecords: () => Promise.reject(named('SecurityError')),
    });
    expect(problem).toMatchObject({ reason: 'refused' });
    expect(repository.lasting).toEqual({ records: false, videos: false });
    await repository.sessions.save(smallSession());
    expect((await repository.sessions.list()).found).toEqual([smallSession()]);
    const set = await repository.beginSet(smallSetStart(), () => undefined);
    await set.video!.write(new Blob(['pictures']));
    expect(await (await set.endVideo())?.text()).toBe('pictures');
    await set.finish(smallRecording(), 'waiting', null);
    expect((await repository.recordings.list()).found).toHaveLength(1);
  });

  it('keeps records alone where videos can’t be kept, as in private windows', async () => {
    const { repository, problem } = await openRepository({
      ...memory,
      openVideos: () => Promise.reject(storageProblem('private-window')),
    });
    expect(problem).toMatchObject({ reason: 'private-window' });
    expect(repository.lasting).toEqual({ records: true, videos: false });
  });

  it.each([
    ['VersionError', 'newer'],
    ['DatabaseClosedError', 'other-tab'],
  ])('does not go around what is kept already (%s)', async (name, reason) => {
    const opening = openRepository({ ...memory, openRecords: () => Promise.reject(named(name)) });
    await expect(opening).rejects.toMatchObject({ reason });
  });

  it('says of storage that does not answer what to do, and closes what opens too late', async () => {
    let answer: (records: Records) => void = () => undefined;
    const openRecords = () => new Promise<Records>((resolve) => (answer = resolve));
    const opening = openRepository(createTimelyShelves({ ...memory, openRecords }, 20));
    await expect(opening).rejects.toMatchObject({ reason: 'silent' });
    await expect(opening).rejects.toThrow(/does not answer. Close all other tabs/);
    const close = vi.fn();
    answer({ ...createMemoryRecords(), close });
    await vi.waitFor(() => expect(close).toHaveBeenCalledOnce());
  });

  it('works without videos where these do not answer', async () => {
    const openVideos = () => new Promise<never>(() => undefined);
    const { repository, problem } = await openRepository(createTimelyShelves({ ...memory, openVideos }, 20));
    expect(problem).toMatchObject({ reason: 'silent' });
    expect(repository.lasting).toEqual({ records: true, videos: false });
  });

  it('opens where the browser never says how much room there is', async () => {
    const storageOf = () => new Promise<never>(() => undefined);
    const { problem } = await openRepository(createTimelyShelves({ ...memory, storageOf }, 20));
    expect(problem).toBeNull();
  });

  it('deletes videos that belong to no set and no session, and no other', async () => {
    const records = createMemoryRecords();
    const videos = createMemoryVideos();
    const start = smallSetStart();
    await records.apply([
      { put: 'sets', key: start.id, value: start },
      { put: 'facts', key: 'a-session', value: {} },
    ]);
    for (const name of [`${start.id}.webm`, 'a-session.mp4', 'forsaken.webm']) await videos.create(name);
    await openRepository({
      ...memory,
      openRecords: () => Promise.resolve(records),
      openVideos: () => Promise.resolve(videos),
    });
    expect((await videos.list()).map(({ name }) => name)).toEqual([`${start.id}.webm`, 'a-session.mp4']);
  });

  it('brings what an earlier version kept to a shelf that can be removed as a whole', async () => {
    const shelves = createTestShelves();
    const earlier = await shelves.openRecords(0);
    await earlier.apply([{ put: 'visits', key: smallSession().id, value: smallSession() }]);
    earlier.close();
    const { repository, problem } = await openRepository(shelves);
    expect(problem).toBeNull();
    expect((await repository.sessions.list()).found).toEqual([smallSession()]);
    expect(await shelves.list()).toEqual([1]);
  });

  it('uses the newest complete shelf, and removes what is left of an interrupted copy', async () => {
    const shelves = createTestShelves();
    const { repository } = await openRepository(shelves);
    await repository.sessions.save(smallSession());
    repository.close();
    const half = await shelves.openRecords(2);
    await half.apply([{ put: 'plans', key: 'half', value: 'a copy that was cut off' }]);
    half.close();
    const again = (await openRepository(shelves)).repository;
    expect((await again.sessions.list()).found).toEqual([smallSession()]);
    expect(await shelves.list()).toEqual([1]);
  });

  it('leaves no shelf with anything on it where everything is deleted', async () => {
    const shelves = createTestShelves();
    const { repository } = await openRepository(shelves);
    await repository.sessions.save(smallSession());
    await repository.eraseAll();
    expect(await shelves.list()).toEqual([2]);
    expect(await repository.sessions.list()).toEqual({ found: [], unreadable: [] });
    await repository.sessions.save(smallSession());
    expect((await repository.sessions.list()).found).toHaveLength(1);
  });
});
