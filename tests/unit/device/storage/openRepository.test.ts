import { describe, expect, it } from 'vitest';
import { createMemoryRecords } from '#device/storage/memoryRecords';
import { createMemoryVideos } from '#device/storage/memoryVideos';
import { openRepository } from '#device/storage/openRepository';
import { storageProblem } from '#device/storage/storageProblem';
import { smallRecording } from '../../../support/smallRecording';
import { smallSession } from '../../../support/smallSession';
import { smallSetStart } from '../../../support/smallSet';

const named = (name: string) => Object.assign(new Error('from the browser'), { name });
const openMemory = {
  openRecords: () => Promise.resolve(createMemoryRecords()),
  openVideos: () => Promise.resolve(createMemoryVideos()),
};

describe('openRepository(openers)', () => {
  it('says that all outlasts the tab where both kinds of storage open', async () => {
    const { repository, problem } = await openRepository(openMemory);
    expect(problem).toBeNull();
    expect(repository.lasting).toEqual({ records: true, videos: true });
  });

  it('works on in memory where storage is refused, and says that nothing outlasts the tab, and why', async () => {
    const { repository, problem } = await openRepository({
      ...openMemory,
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
      ...openMemory,
      openVideos: () => Promise.reject(storageProblem('private-window')),
    });
    expect(problem).toMatchObject({ reason: 'private-window' });
    expect(repository.lasting).toEqual({ records: true, videos: false });
  });

  it.each([
    ['VersionError', 'newer'],
    ['DatabaseClosedError', 'other-tab'],
  ])('does not go around what is kept already (%s)', async (name, reason) => {
    const opening = openRepository({ ...openMemory, openRecords: () => Promise.reject(named(name)) });
    await expect(opening).rejects.toMatchObject({ reason });
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
      openRecords: () => Promise.resolve(records),
      openVideos: () => Promise.resolve(videos),
    });
    expect((await videos.list()).map(({ name }) => name)).toEqual([`${start.id}.webm`, 'a-session.mp4']);
  });
});
