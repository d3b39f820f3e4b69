import { describe, expect, it, vi } from 'vitest';
import { createRepository } from '#device/storage/createRepository';
import { createMarks } from '#device/storage/marks';
import { createMemoryVideos } from '#device/storage/memoryVideos';
import { tableNames, tableOf, type RecordChange } from '#device/storage/records';
import type { Repository } from '#device/storage/repository';
import type { StorageProblem } from '#device/storage/storageProblem';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead } from '#documents/recording/recordingHead';
import { sessionVersion } from '#documents/session/sessionDocument';
import { keptOf, version5 } from '../../../support/olderRecording';
import { createTestDevice } from '../../../support/openTestRepository';
import { smallRecording, smallRecordingParts } from '../../../support/smallRecording';
import { smallSession } from '../../../support/smallSession';
import { rowsOf, smallSetStart } from '../../../support/smallSet';

const recording = smallRecording();
const session = smallSession();
const rows = rowsOf(smallRecordingParts().track);
const video = `${recording.id}.webm`;
const beside = { visitId: session.id, video, fromVideo: 'waiting' } as const;
const fail = (problem: StorageProblem) => {
  throw problem;
};
const otherId = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`;
const missing = expect.objectContaining({ name: 'StorageProblem', reason: 'missing' });

/** The edition of the recording that is kept. */
async function editionIn({ recordings }: Repository): Promise<string> {
  return (await recordings.findHead(recording.id))!.edition;
}

async function writeVideo(device: ReturnType<typeof createTestDevice>, name: string, text = 'pictures') {
  const writer = await device.videos.create(name);
  await writer.write(new Blob([text]));
  await writer.close();
}

describe('repository.visits', () => {
  it('finds a session again when the program is reopened, newest first in the list', async () => {
    const device = createTestDevice();
    const first = await device.open();
    await first.sessions.save(session);
    await first.sessions.save({
      ...session,
      id: otherId(1),
      startedAt: '2026-04-06T06:07:08.000Z',
      endedAt: null,
    });
    first.close();
    const again = await device.open();
    expect(await again.sessions.find(session.id)).toEqual(session);
    expect(await again.sessions.find(otherId(2))).toBeNull();
    expect((await again.sessions.list()).found.map(({ id }) => id)).toEqual([otherId(1), session.id]);
  });

  it('refuses to save a session that could not be read back', async () => {
    const repository = await createTestDevice().open();
    await expect(repository.sessions.save({ ...session, effort: 11 })).rejects.toThrow(/"effort"/);
    expect((await repository.sessions.list()).found).toEqual([]);
  });

  it('reports a session that can’t be read, lists the others, and leaves it there', async () => {
    const device = createTestDevice();
    const records = await device.openRecords();
    const newer = { ...session, version: sessionVersion + 1, id: otherId(3) };
    await records.apply([{ put: 'visits', key: newer.id, value: newer }]);
    const repository = await device.open({ records });
    await repository.sessions.save(session);
    const { found, unreadable } = await repository.sessions.list();
    expect(found).toEqual([session]);
    expect(unreadable).toEqual([
      {
        id: newer.id,
        sentence: expect.stringMatching(new RegExp(`version ${sessionVersion + 1}.*Update`)) as string,
      },
    ]);
    expect(await records.get('visits', newer.id)).toEqual(newer);
  });

  it('deletes a session with its recordings and videos, and nothing else', async () => {
    const device = createTestDevice();
    const repository = await device.open();
    const other = { ...recording, id: otherId(1) };
    await repository.sessions.save(session);
    await repository.recordings.save(recording, beside);
    await repository.recordings.save(other, { visitId: null, video: `${other.id}.webm`, fromVideo: 'done' });
    await writeVideo(device, video);
    await writeVideo(device, `${other.id}.webm`);
    await repository.sessions.remove(session.id);
    expect(await repository.sessions.find(session.id)).toBeNull();
    expect((await repository.recordings.list()).found.map(({ id }) => id)).toEqual([other.id]);
    expect((await repository.videos.list()).map(({ name }) => name)).toEqual([`${other.id}.webm`]);
  });
});

describe('repository.recordings', () => {
  it('finds a recording again whole, and lists what it is without its joints', async () => {
    const device = createTestDevice();
    const first = await device.open();
    await first.recordings.save(recording, beside);
    first.close();
    const again = await device.open();
    const { createdAt, id } = recording;
    const described = { id, createdAt, task: 'split-stance-sit-to-stand', side: 'right', limitsSet: null };
    const facts = { ...described, ...beside };
    expect(await again.recordings.find(id)).toMatchObject({ recording, facts });
    expect(await again.recordings.list()).toEqual({ found: [facts], unreadable: [] });
    expect(await again.recordings.find(otherId(1))).toBeNull();
  });

  it('migrates a recording that an older version of the program kept', async () => {
    const device = createTestDevice();
    const records = await device.openRecords();
    const repository = await device.open({ records });
    await repository.recordings.save(recording, beside);
    await records.apply([
      { put: 'sessions', key: recording.id, value: { ...version5(recording), version: 1 } },
    ]);
    expect((await repository.recordings.find(recording.id))?.recording).toEqual(keptOf(recording));
    expect(recording.version).toBeGreaterThan(1);
  });

  it('says what is wrong with a recording that was damaged in storage', async () => {
    const device = createTestDevice();
    const records = await device.openRecords();
    const repository = await device.open({ records });
    await repository.recordings.save(recording, beside);
    const damaged: RecordingDocument = structuredClone(recording);
    damaged.observed.xPx.pop();
    await records.apply([{ put: 'sessions', key: recording.id, value: damaged }]);
    await expect(repository.recordings.find(recording.id)).rejects.toThrow(
      /^This kept recording is damaged: "observed.xPx" has \d+ values.*Restore it from a saved file, or delete it\.$/,
    );
    await repository.recordings.save(recording, beside);
    await records.apply([{ remove: 'rows', key: '', andBelow: true }]);
    await expect(repository.recordings.find(recording.id)).rejects.toThrow(/damaged at "observed"/);
    expect((await repository.recordings.findHead(recording.id))?.recording).toEqual(recordingHead(recording));
  });

  it('says of a kept recording beyond what can be measured in which way, and leaves it as it is', async () => {
    const device = createTestDevice();
    const records = await device.openRecords();
    const repository = await device.open({ records });
    const { timesMs, ...points } = recording.observed;
    const long = {
      ...recording,
      observed: { timesMs: [...timesMs.slice(0, -1), 24 * 3_600_000], ...points },
    };
    await repository.recordings.save(recording, beside);
    await records.apply([{ put: 'sessions', key: recording.id, value: long }]);
    const sentence =
      'This kept recording lasts longer than 30 minutes, which is longer than can be measured at once. ' +
      'It stays as it is, but can’t be shown here: film shorter sets, in one go.';
    await expect(repository.recordings.find(recording.id)).rejects.toThrow(sentence);
    expect(await records.get('sessions', recording.id)).toEqual(long);
  });

  it('refuses to save a recording that could not be read back', async () => {
    const repository = await createTestDevice().open();
    const damaged: RecordingDocument = { ...recording, createdAt: 'yesterday' };
    await expect(repository.recordings.save(damaged, beside)).rejects.toThrow(/"createdAt"/);
    expect((await repository.recordings.list()).found).toEqual([]);
  });

  it('replaces it by what was tracked from the video, keeps its facts, and drops the rows', async () => {
    const repository = await createTestDevice().open();
    await repository.recordings.save(recording, beside);
    const tracking = await repository.trackingRows(recording.id, recording.observed.model, fail);
    tracking.addRow(rows[0]!);
    await tracking.flush();
    const measured = { ...recording, note: 'measured again' };
    await repository.recordings.replaceFromVideo(measured, await editionIn(repository));
    const kept = await repository.recordings.find(recording.id);
    expect(kept?.recording).toEqual(measured);
    expect(kept?.facts).toMatchObject({ ...beside, fromVideo: 'done' });
    expect((await repository.trackingRows(recording.id, recording.observed.model, fail)).earlier).toEqual([]);
  });

  it('does not bring a deleted recording back', async () => {
    const repository = await createTestDevice().open();
    await repository.recordings.save(recording, beside);
    await repository.recordings.remove(recording.id);
    await expect(repository.recordings.replaceFromVideo(recording, '')).rejects.toEqual(missing);
    await expect(repository.recordings.setFromVideo(recording.id, 'waiting')).rejects.toEqual(missing);
    expect((await repository.recordings.list()).found).toEqual([]);
  });

  it('notes that measuring from the video was called off', async () => {
    const repository = await createTestDevice().open();
    await repository.recordings.save(recording, beside);
    await repository.recordings.setFromVideo(recording.id, 'declined');
    expect((await repository.recordings.find(recording.id))?.facts.fromVideo).toBe('declined');
  });
});

describe('repository.plans', () => {
  const text = '{"format":"some plan","words":"Slowly."}';

  it('gives back the text as it was', async () => {
    const repository = await createTestDevice().open({ now: () => new Date('2026-05-06T07:08:09Z') });
    await repository.plans.save('plan-7', text);
    expect(await repository.plans.find('plan-7')).toBe(text);
    expect(await repository.plans.find('plan-8')).toBeNull();
    const savedAt = '2026-05-06T07:08:09.000Z';
    expect((await repository.plans.list()).found).toEqual([{ id: 'plan-7', savedAt, text }]);
    await repository.plans.remove('plan-7');
    expect((await repository.plans.list()).found).toEqual([]);
  });

  it.each([
    ['what is no JSON', 'plan-7', '{'],
    ['a plan without a name', '', text],
    ['a plan of a size that none has', 'plan-7', JSON.stringify('x'.repeat(1_000_001))],
  ])('refuses %s in a sentence', async (_, id, wrong) => {
    const repository = await createTestDevice().open();
    await expect(repository.plans.save(id, wrong)).rejects.toThrow(/can’t be kept.*Ask for it again/);
  });
});

describe('repository.beginSet(start, onProblem)', () => {
  async function recordSome(device: ReturnType<typeof createTestDevice>) {
    const repository = await device.open();
    const set = await repository.beginSet(smallSetStart(), fail);
    rows.slice(0, 30).forEach((row) => set.addRow(row));
    await set.flush();
    await set.video!.write(new Blob(['pic']));
    await set.video!.write(new Blob(['tures']));
    return { repository, set };
  }

  it('leaves what was recorded to the next start where the tab ends, with rows and video', async () => {
    const device = createTestDevice();
    await recordSome(device); // ... and the tab ends here.
    const next = await device.open();
    expect(await next.interrupted()).toEqual({
      found: [{ start: smallSetStart(), frames: 30, lastRowMs: rows[29]!.timeMs, videoBytes: 8 }],
      unreadable: [],
    });
    const left = await next.readInterrupted(recording.id);
    expect(left.rows).toEqual(rows.slice(0, 30));
    expect(await left.video!.text()).toBe('pictures');
    expect(left.video!.type).toBe('video/webm');
  });

  it('knows when it was begun, also where the tab ends', async () => {
    const device = createTestDevice();
    const { set } = await recordSome(device);
    await set.go(8765.4);
    const [left] = (await (await device.open()).interrupted()).found;
    expect(left!.start).toEqual({ ...smallSetStart(), setup: { ...smallSetStart().setup, goMs: 8765.4 } });
  });

  it('is not interrupted while it continues, in this tab or another', async () => {
    const device = createTestDevice();
    const marks = createMarks(undefined);
    const [one, other] = [await device.open({ marks }), await device.open({ marks })];
    const set = await one.beginSet(smallSetStart(), fail);
    expect((await one.interrupted()).found).toEqual([]);
    expect((await other.interrupted()).found).toEqual([]);
    await set.drop();
    expect((await marks.held()).size).toBe(0);
  });

  it('becomes a recording with its session, and nothing else of it stays', async () => {
    const device = createTestDevice();
    const { repository, set } = await recordSome(device);
    expect(await (await set.endVideo())?.text()).toBe('pictures');
    await set.finish(recording, 'waiting', session);
    expect((await repository.recordings.find(recording.id))?.facts).toMatchObject(beside);
    expect(await repository.sessions.find(session.id)).toEqual(session);
    const next = await device.open();
    expect((await next.interrupted()).found).toEqual([]);
    expect(await (await device.openRecords()).list('rows', 'set:')).toEqual([]);
    expect(await next.videos.read(video)).not.toBeNull();
  });

  it('can be finished again where it could not be kept the first time', async () => {
    const device = createTestDevice();
    const { repository, set } = await recordSome(device);
    await expect(set.finish({ ...recording, note: 'x'.repeat(3000) }, 'waiting', null)).rejects.toThrow(
      /"note"/,
    );
    set.addRow(rows[30]!);
    await set.finish(recording, 'waiting', null);
    expect(await repository.recordings.find(recording.id)).not.toBeNull();
  });

  it('leaves nothing where it is dropped', async () => {
    const device = createTestDevice();
    const { set } = await recordSome(device);
    await set.drop();
    const records = await device.openRecords();
    expect([await records.list('sets'), await records.list('rows'), await device.videos.list()]).toEqual([
      [],
      [],
      [],
    ]);
  });

  it('goes without a video where none is kept', async () => {
    const repository = await createTestDevice().open();
    const set = await repository.beginSet({ ...smallSetStart(), videoType: null }, fail);
    expect(set.video).toBeNull();
    expect(await set.endVideo()).toBeNull();
    await set.finish(recording, 'impossible', null);
    expect((await repository.recordings.find(recording.id))?.facts.video).toBeNull();
  });

  it('leaves nothing where the video could not be begun, and says why', async () => {
    const device = createTestDevice();
    const full = Object.assign(new Error('no room'), { name: 'StorageProblem', reason: 'full' });
    vi.spyOn(device.videos, 'create').mockRejectedValue(full);
    const repository = await device.open();
    await expect(repository.beginSet(smallSetStart(), fail)).rejects.toBe(full);
    expect((await repository.interrupted()).found).toEqual([]);
  });
});

describe('repository.keepInterrupted(recording, fromVideo, session)', () => {
  async function interrupted() {
    const device = createTestDevice();
    const set = await (await device.open()).beginSet(smallSetStart(), fail);
    rows.slice(0, 5).forEach((row) => set.addRow(row));
    await set.flush();
    await set.video!.write(new Blob(['pictures']));
    return { device, next: await device.open() };
  }

  it('makes it a recording with its video and its session', async () => {
    const { device, next } = await interrupted();
    await next.keepInterrupted(recording, 'waiting', session);
    expect((await next.recordings.find(recording.id))?.facts).toMatchObject(beside);
    expect(await next.sessions.find(session.id)).toEqual(session);
    expect((await next.interrupted()).found).toEqual([]);
    expect(await (await device.openRecords()).list('rows', 'set:')).toEqual([]);
    await expect(next.keepInterrupted(recording, 'waiting', session)).rejects.toEqual(missing);
  });

  it('is not needed where it is dropped', async () => {
    const { device, next } = await interrupted();
    await next.dropInterrupted(recording.id);
    expect((await next.interrupted()).found).toEqual([]);
    expect(await device.videos.list()).toEqual([]);
    await expect(next.readInterrupted(recording.id)).rejects.toEqual(missing);
  });

  it('still gives the video where the rows are damaged', async () => {
    const { device, next } = await interrupted();
    const records = await device.openRecords();
    await records.apply([{ put: 'rows', key: `set:${recording.id}/00000001`, value: 'damaged' }]);
    expect((await next.interrupted()).found).toMatchObject([{ frames: 0, lastRowMs: null, videoBytes: 8 }]);
    expect(await next.readInterrupted(recording.id)).toMatchObject({ rows: [], video: { size: 8 } });
  });
});

describe('repository.trackingRows(id, model, onProblem)', () => {
  const { model } = recording.observed;

  it('continues from where the same model was when the page was closed', async () => {
    const device = createTestDevice();
    const first = await (await device.open()).trackingRows(recording.id, model, fail);
    expect(first.earlier).toEqual([]);
    rows.slice(0, 6).forEach((row) => first.addRow(row));
    await first.flush();
    const second = await (await device.open()).trackingRows(recording.id, model, fail);
    expect(second.earlier).toEqual(rows.slice(0, 6));
    rows.slice(4, 9).forEach((row) => second.addRow(row));
    await second.flush();
    const third = await (await device.open()).trackingRows(recording.id, model, fail);
    expect(third.earlier).toEqual(rows.slice(0, 9));
  });

  it.each([{ size: 'heavy' }, { weights: 'others 2.0.0' }, { backend: 'webgl' }] as const)(
    'starts afresh with %j',
    async (change) => {
      const device = createTestDevice();
      const first = await (await device.open()).trackingRows(recording.id, model, fail);
      first.addRow(rows[0]!);
      await first.flush();
      const next = await device.open();
      expect((await next.trackingRows(recording.id, { ...model, ...change }, fail)).earlier).toEqual([]);
      expect((await next.trackingRows(recording.id, model, fail)).earlier).toEqual([]);
    },
  );

  it('starts afresh where the rows are damaged', async () => {
    const device = createTestDevice();
    const repository = await device.open();
    const first = await repository.trackingRows(recording.id, model, fail);
    first.addRow(rows[0]!);
    await first.flush();
    const records = await device.openRecords();
    await records.apply([{ put: 'rows', key: `video:${recording.id}/00000000`, value: 'damaged' }]);
    expect((await repository.trackingRows(recording.id, model, fail)).earlier).toEqual([]);
  });
});

describe('repository.space() and askToPersist()', () => {
  it('give what the browser reports', async () => {
    const storage = {
      estimate: () => Promise.resolve({ usage: 300, quota: 1000 }),
      persist: () => Promise.resolve(true),
    };
    const repository = await createTestDevice().open({ storage });
    expect(await repository.space()).toEqual({ usedBytes: 300, freeBytes: 700 });
    expect(await repository.askToPersist()).toBe(true);
  });

  it('give nothing where the browser reports nothing', async () => {
    const storage = {
      estimate: () => Promise.reject(new Error('refused')),
      persist: () => Promise.reject(new Error('refused')),
    };
    for (const given of [undefined, storage]) {
      const repository = await createTestDevice().open({ storage: given });
      expect(await repository.space()).toBeNull();
      expect(await repository.askToPersist()).toBe(false);
    }
  });
});

describe('repository.freeVideos(before), repository.eraseAll()', () => {
  async function withVideo() {
    const device = createTestDevice();
    const repository = await device.open();
    const set = await repository.beginSet(smallSetStart(), () => undefined);
    await set.video!.write(new Blob(['12345']));
    await set.endVideo();
    await set.finish(smallRecording(), 'done', smallSession());
    return { device, repository, recording: smallRecording() };
  }

  it('deletes old videos and reports how much that frees; what was measured stays', async () => {
    const { repository, recording } = await withVideo();
    expect(await repository.freeVideos(recording.createdAt)).toBe(0);
    expect(await repository.freeableBytes(recording.createdAt)).toBe(0);
    expect(await repository.freeableBytes('9999-01-01T00:00:00.000Z')).toBe(5);
    expect(await repository.freeVideos('9999-01-01T00:00:00.000Z')).toBe(5);
    expect(await repository.videos.list()).toEqual([]);
    const kept = (await repository.recordings.find(recording.id))!;
    expect(kept.facts.video).toBeNull();
    expect(kept.recording).toEqual(recording);
  });

  it('leaves a video that still waits to be measured from', async () => {
    const { repository, recording } = await withVideo();
    await repository.recordings.setFromVideo(recording.id, 'waiting');
    expect(await repository.freeVideos('9999-01-01T00:00:00.000Z')).toBe(0);
    expect(await repository.videos.list()).toHaveLength(1);
  });

  it('leaves nothing of anybody, in no table and among no videos', async () => {
    const { device, repository } = await withVideo();
    await repository.plans.save('a', '{}');
    const left = await repository.beginSet(
      { ...smallSetStart(), id: '11111111-2222-4333-8444-555555555555' },
      () => undefined,
    );
    await left.video!.write(new Blob(['678']));
    await left.flush();
    repository.close();
    const opened = await device.open(); // As after a tab that was killed: its mark went with it.
    await opened.eraseAll();
    opened.close();
    const records = await device.openRecords();
    for (const table of tableNames) expect(await records.list(table), table).toEqual([]);
    expect(await device.videos.list()).toEqual([]);
  });

  it('does not begin while a set is recorded', async () => {
    const { repository } = await withVideo();
    await repository.beginSet(
      { ...smallSetStart(), id: '11111111-2222-4333-8444-555555555555' },
      () => undefined,
    );
    await expect(repository.eraseAll()).rejects.toThrow(/Another tab/);
    expect((await repository.sessions.list()).found).toHaveLength(1);
  });
});

describe('repository.recordings.update(recording)', () => {
  const head = recordingHead(recording);
  const review = { limitsSet: [], remarks: [], cues: [], reviewed: { by: 'T1', at: recording.createdAt } };

  it('replaces a recording by its reviewed version, and keeps what belongs to it', async () => {
    const device = createTestDevice();
    const repository = await device.open();
    await repository.recordings.save(recording, beside);
    await repository.recordings.update({ ...head, review }, await editionIn(repository));
    repository.close();
    const found = await (await device.open()).recordings.find(recording.id);
    expect(found!.recording).toEqual({ ...recording, review });
    expect(found!.facts).toMatchObject(beside);
  });

  it('writes no joints: they stay as they were, and a recording that holds them is refused', async () => {
    const { openRecords } = createTestDevice();
    const records = await openRecords();
    const written: RecordChange[] = [];
    const repository = createRepository({
      videos: createMemoryVideos(),
      lasting: { records: true, videos: true },
      records: {
        ...records,
        apply(changes) {
          written.push(...changes);
          return records.apply(changes);
        },
      },
    });
    await repository.recordings.save(recording, beside);
    written.length = 0;
    await repository.recordings.update({ ...head, review }, await editionIn(repository));
    expect(written.map(tableOf)).toEqual(['sessions', 'facts', 'digests']);
    const bytes = JSON.stringify(written).length;
    expect(bytes).toBeLessThan(JSON.stringify(recording).length / 3);
    await expect(repository.recordings.update(recording, '')).rejects.toThrow(/observed/);
    expect((await repository.recordings.find(recording.id))!.recording).toEqual({ ...recording, review });
  });

  it('moves the joints out of a recording that an older version of the program kept whole', async () => {
    const device = createTestDevice();
    const repository = await device.open();
    await repository.recordings.save(recording, beside);
    const records = await device.openRecords();
    await records.apply([
      { put: 'sessions', key: recording.id, value: recording },
      { remove: 'rows', key: '', andBelow: true },
    ]);
    expect((await repository.recordings.find(recording.id))!.recording).toEqual(recording);
    expect((await repository.recordings.findHead(recording.id))!.recording).toEqual(head);
    await repository.recordings.update({ ...head, review }, await editionIn(repository));
    expect(await records.get('sessions', recording.id)).not.toHaveProperty('observed');
    expect((await repository.recordings.find(recording.id))!.recording).toEqual({ ...recording, review });
  });

  it('gives the limits that were set last for later sets apart from the document, until they are undone', async () => {
    const repository = await createTestDevice().open();
    await repository.recordings.save(recording, beside);
    const once = (most: number) => ({
      limits: { 'knee-angle': { least: -9, most } },
      by: 'T1',
      at: recording.createdAt,
    });
    const entry = (most: number) => ({ ...once(most), forLater: true as const });
    await repository.recordings.update(
      { ...head, review: { ...review, limitsSet: [entry(4), entry(6), once(8)] } },
      await editionIn(repository),
    );
    expect((await repository.recordings.list()).found[0]!.limitsSet).toEqual(entry(6));
    await repository.recordings.update({ ...head, review }, await editionIn(repository));
    expect((await repository.recordings.list()).found[0]).toMatchObject({ limitsSet: null });
  });

  it('reads limits as an older version kept them, apart from the document', async () => {
    const device = createTestDevice();
    const repository = await device.open();
    await repository.recordings.save(recording, beside);
    const records = await device.openRecords();
    const facts = (await records.get('facts', recording.id)) as object;
    const limits = { kneeInwardDeg: 6, kneeOutwardDeg: 9, others: { depth: { most: 0.3 } } };
    const limitsSet = { limits, by: 'T1', at: recording.createdAt };
    await records.apply([{ put: 'facts', key: recording.id, value: { ...facts, limitsSet } }]);
    expect((await repository.recordings.list()).found[0]!.limitsSet!.limits).toEqual({
      'knee-angle': { least: -9, most: 6 },
      depth: { most: 0.3 },
    });
  });

  it('overwrites nothing where another tab has saved a review since, and says so', async () => {
    const device = createTestDevice();
    const [one, other] = [await device.open(), await device.open()];
    await one.recordings.save(recording, beside);
    const opened = await editionIn(other);
    const next = await one.recordings.update({ ...head, review }, await editionIn(one));
    const refused = other.recordings.update(head, opened);
    await expect(refused).rejects.toMatchObject({ reason: 'changed' });
    await expect(refused).rejects.toThrow(/Another tab.*nothing was overwritten/);
    await expect(other.recordings.replaceFromVideo(recording, opened)).rejects.toMatchObject({
      reason: 'changed',
    });
    expect((await other.recordings.find(recording.id))!.recording).toEqual({ ...recording, review });
    await one.recordings.update(head, next);
    expect((await other.recordings.find(recording.id))!.recording).toEqual(recording);
  });

  it('does not bring back a recording that was deleted meanwhile', async () => {
    const repository = await createTestDevice().open();
    await expect(repository.recordings.update({ ...head, review }, '')).rejects.toEqual(missing);
    expect(await repository.recordings.find(recording.id)).toBeNull();
  });
});
