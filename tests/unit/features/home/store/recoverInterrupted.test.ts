import { describe, expect, it } from 'vitest';
import { Problem } from '#core/problem';
import type { SetStart } from '#device/storage/keptSchemas';
import { unwanted } from '#features/home/guide/unwanted';
import { recoverInterrupted } from '#features/home/store/recoverInterrupted';
import { facts, fakeAdapters, film } from '../../../../support/fakeAdapters';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallSession } from '../../../../support/smallSession';
import { rowsOf, smallSetStart } from '../../../../support/smallSet';

const rows = rowsOf(film.track);
const start: SetStart = { ...smallSetStart(), widthPx: film.track.widthPx, heightPx: film.track.heightPx };
const session = { ...smallSession(), endedAt: null, sets: [smallSession().sets[1]!] };

async function interrupted({
  frames = rows.length,
  video = 'pictures',
  ...change
}: Partial<SetStart> & { frames?: number; video?: string } = {}) {
  const device = createTestDevice();
  const set = await (await device.open()).beginSet({ ...start, ...change }, () => undefined);
  rows.slice(0, frames).forEach((row) => set.addRow(row));
  await set.flush();
  if (video !== '') await set.video?.write(new Blob([video]));
  const repository = await device.open();
  await repository.sessions.save(session);
  return { repository, openFrameSource: fakeAdapters().adapters.openFrameSource };
}

const unreadable = () => Promise.reject(new Problem('video', 'It is cut off. Copy it again.'));

describe('recoverInterrupted(id, { repository, openFrameSource })', () => {
  it('makes a recording of what was tracked, which waits to be measured from its video', async () => {
    const { repository, openFrameSource } = await interrupted();
    const recording = await recoverInterrupted(start.id, { repository, openFrameSource });
    const kept = await repository.recordings.find(start.id);
    expect(kept?.recording).toEqual(recording);
    expect(kept?.facts).toMatchObject({
      fromVideo: 'waiting',
      video: `${start.id}.webm`,
      visitId: session.id,
    });
    expect(recording).toMatchObject({ createdAt: start.startedAt, setup: start.setup, limits: start.limits });
    expect(recording.video).toMatchObject({ codec: facts.codec, bytes: facts.fileBytes });
    expect(recording.observed.model.size).toBe('lite');
    expect(recording.derived.repetitions).toHaveLength(3);
    expect((await repository.interrupted()).found).toEqual([]);
  });

  it('adds the set to its session, as cut short', async () => {
    const { repository, openFrameSource } = await interrupted();
    await recoverInterrupted(start.id, { repository, openFrameSource });
    const line = { ...start.visitSet!, sessionId: start.id, cutShort: unwanted.interrupted };
    expect((await repository.sessions.find(session.id))?.sets).toEqual([...session.sets, line]);
  });

  it('keeps the set alone where its session is gone', async () => {
    const { repository, openFrameSource } = await interrupted();
    await repository.sessions.remove(session.id);
    await recoverInterrupted(start.id, { repository, openFrameSource });
    expect(await repository.recordings.find(start.id)).not.toBeNull();
    expect((await repository.sessions.list()).found).toEqual([]);
  });

  it('keeps what was tracked where the video can’t be read, and says that nothing waits', async () => {
    const { repository } = await interrupted();
    const recording = await recoverInterrupted(start.id, { repository, openFrameSource: unreadable });
    expect(recording.video).toMatchObject({ bytes: 0, codec: 'none', durationMs: rows.at(-1)!.timeMs });
    expect(recording.video.frameRateHz).toBeCloseTo(25, 6);
    expect((await repository.recordings.find(start.id))?.facts.fromVideo).toBe('impossible');
  });

  it('keeps a video before the first joint was tracked: it waits to be measured', async () => {
    const { repository, openFrameSource } = await interrupted({ frames: 0 });
    const recording = await recoverInterrupted(start.id, { repository, openFrameSource });
    expect(recording.derived.repetitions).toEqual([]);
    expect((await repository.recordings.find(start.id))?.facts.fromVideo).toBe('waiting');
  });

  it('says that there is nothing to be kept, and leaves the choice to drop it', async () => {
    const { repository, openFrameSource } = await interrupted({ frames: 0, video: '' });
    await expect(recoverInterrupted(start.id, { repository, openFrameSource })).rejects.toThrow(/Delete it/);
    expect((await repository.interrupted()).found).toHaveLength(1);
  });
});
