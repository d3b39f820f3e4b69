import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { LockedDevice } from '#device/storage/lock/openLocked';
import { openRepository } from '#device/storage/openRepository';
import { tableNames } from '#device/storage/records';
import type { Shelves } from '#device/storage/shelves';
import type { Videos } from '#device/storage/videos';
import { quickScrypt } from '../../../../support/quickScrypt';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';
import { smallSetStart } from '../../../../support/smallSet';
import { createTestShelves } from '../../../../support/testShelves';

const passphrase = 'otter river stone lamp';
const recording = smallRecording();
const session = { ...smallSession(), sets: [{ ...smallSession().sets[0]!, sessionId: recording.id }] };
const cutId = '5f0c6a52-6b0c-4c1e-9a43-0f2d6a1b7c90';
const pictures = Uint8Array.from({ length: 2_300_000 }, (_, index) => index % 251);
const answer = (words: string) => (locked: LockedDevice) => locked.unlock(words, () => undefined);

/** A device with a session, its video, a plan, notes, and a set that was broken off. */
async function filledDevice() {
  const shelves = createTestShelves();
  let asked = 0;
  const open = async (ask = answer(passphrase), on: Shelves = shelves) => {
    const counted = (locked: LockedDevice) => {
      asked++;
      return ask(locked);
    };
    const opened = await openRepository(on, counted, quickScrypt);
    return { ...opened, lock: opened.repository.lock! };
  };
  const { repository, lock } = await open();
  const set = await repository.beginSet(smallSetStart(), () => undefined);
  await set.video!.write(new Blob([pictures]));
  await set.endVideo();
  await set.finish(recording, 'done', session);
  await repository.plans.save('plan', '{"patient":"Grey Otter 3"}');
  await repository.notes.write('draft', 'Grey Otter 3');
  const cut = await repository.beginSet({ ...smallSetStart(), id: cutId, videoType: null }, () => undefined);
  cut.addRow({ timeMs: 40, row: new Float32Array(99).fill(0.5) });
  await cut.flush();
  const before = await everything(repository);
  /** The same with the lock turned on, and opened again. */
  const locked = async () => {
    await lock.turnOn(passphrase);
    return open();
  };
  const shelf = async () => (await shelves.peek()).at(-1)!;
  return { shelves, shelf, repository, lock, before, open, locked, askedCount: () => asked };
}

/** Everything that lies on the device, as text. */
async function onDisk(shelves: ReturnType<typeof createTestShelves>) {
  let text = '';
  for (const { records, videos } of await shelves.peek()) {
    for (const table of tableNames)
      for (const { value } of await records.list(table))
        text += JSON.stringify(value, (_, field: unknown) =>
          field instanceof Uint8Array ? new TextDecoder('latin1').decode(field) : field,
        );
    for (const { name } of await videos.list()) {
      const bytes = new Uint8Array(await (await videos.read(name))!.arrayBuffer());
      text += new TextDecoder('latin1').decode(bytes);
    }
  }
  return text;
}
const aPicture = new TextDecoder('latin1').decode(pictures.subarray(1000, 1100));

async function everything(repository: Awaited<ReturnType<typeof openRepository>>['repository']) {
  const { facts, recording: found } = (await repository.recordings.find(recording.id))!;
  return {
    sessions: await repository.sessions.list(),
    facts,
    found,
    plan: await repository.plans.find('plan'),
    notes: await repository.notes.read(),
    video: createHash('sha256')
      .update(new Uint8Array(await (await repository.videos.read(facts.video!))!.arrayBuffer()))
      .digest('hex'),
    videos: (await repository.videos.list()).length,
    rows: (await repository.readInterrupted(cutId)).rows,
  };
}

/** The shelves of a device that is full when the second piece of a video comes. */
function fullShelves(shelves: Shelves): Shelves {
  const full = (videos: Videos): Videos => ({
    ...videos,
    async create(name) {
      const writer = await videos.create(name);
      return { ...writer, write: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) };
    },
  });
  return { ...shelves, openVideos: async (shelf) => full(await shelves.openVideos(shelf)) };
}

describe('the passphrase lock', () => {
  it('seals all that is kept, at the next opening, and gives it back the same', async () => {
    const { shelves, before, locked, askedCount } = await filledDevice();
    expect(await onDisk(shelves)).toContain('Grey Otter 3');
    expect(await onDisk(shelves)).toContain(aPicture);

    const again = await locked();
    expect(again.problem).toBeNull();
    expect(again.lock.problem).toBeNull();
    expect(await again.lock.isOn()).toBe(true);
    expect(askedCount()).toBe(1);
    expect(await everything(again.repository)).toEqual(before);
    const disk = await onDisk(shelves);
    for (const plain of ['Grey Otter 3', session.patient, recording.setup.task, aPicture])
      expect(disk).not.toContain(plain);
  });

  it('removes the shelf on which everything lay in plain', async () => {
    const { shelves, locked } = await filledDevice();
    expect(await shelves.list()).toEqual([1]);
    await locked();
    expect(await shelves.list()).toEqual([2]);
  });

  it('can start with an empty device instead', async () => {
    const { shelves, lock, open } = await filledDevice();
    await lock.turnOn(passphrase, true);
    const { repository, lock: after } = await open();
    expect(await after.isOn()).toBe(true);
    expect(await repository.sessions.list()).toEqual({ found: [], unreadable: [] });
    expect(await repository.videos.list()).toEqual([]);
    expect(await shelves.list()).toEqual([2]);
  });

  it('seals what is kept later, pieces of a recording too', async () => {
    const { shelves, locked } = await filledDevice();
    const { repository } = await locked();
    const start = { ...smallSetStart(), id: crypto.randomUUID() };
    const set = await repository.beginSet(start, () => undefined);
    await Promise.all([1, 2, 3].map((at) => set.video!.write(new Blob([`second ${at} of the film, `]))));
    set.addRow({ timeMs: 40, row: new Float32Array(99).fill(0.25) });
    await set.flush();
    expect(await onDisk(shelves)).not.toContain('of the film');
    const { video, rows } = await repository.readInterrupted(start.id);
    expect(await video!.text()).toBe('second 1 of the film, second 2 of the film, second 3 of the film, ');
    expect(rows[0]!.row![0]).toBe(0.25);
  });

  it('opens with no other passphrase', async () => {
    const { open, locked } = await filledDevice();
    await locked();
    await expect(open(answer('another river stone lamp'))).rejects.toMatchObject({
      reason: 'wrong-passphrase',
    });
  });

  it('seals everything anew where the passphrase is changed: the earlier one opens nothing on the disk', async () => {
    const { shelves, before, open, locked } = await filledDevice();
    const { lock } = await locked();
    const first = (await shelves.peek())[0]!;
    const sealedBefore = await first.records.get('visits', session.id);
    await expect(lock.changePassphrase('wrong words here, all', 'x')).rejects.toMatchObject({
      reason: 'wrong-passphrase',
    });
    await lock.changePassphrase(passphrase, 'four quite other words');
    await expect(open()).rejects.toMatchObject({ reason: 'wrong-passphrase' });
    const { repository } = await open(answer('four quite other words'));
    expect(await everything(repository)).toEqual(before);
    expect(await shelves.list()).toEqual([3]);
    // What was sealed with the earlier key is not taken for what is kept now.
    const now = (await shelves.peek())[0]!.records;
    await now.apply([{ put: 'visits', key: session.id, value: sealedBefore }]);
    await expect(repository.sessions.find(session.id)).rejects.toMatchObject({ reason: 'damaged' });
  });

  it('can be removed, which leaves everything as before', async () => {
    const { shelves, before, open, locked, askedCount } = await filledDevice();
    await (await locked()).lock.turnOff(passphrase);
    const opened = await open();
    expect(await opened.lock.isOn()).toBe(false);
    expect(await everything(opened.repository)).toEqual(before);
    expect(await onDisk(shelves)).toContain('Grey Otter 3');
    const asked = askedCount();
    await open();
    expect(askedCount()).toBe(asked);
  });

  it('changes nothing on a full device, says so, and is done at the next opening', async () => {
    const { shelves, before, lock, open } = await filledDevice();
    await lock.turnOn(passphrase);
    const full = await open(undefined, fullShelves(shelves));
    expect(full.lock.problem).toMatchObject({ reason: 'full' });
    expect(full.lock.problem!.message).toMatch(
      /is not sealed, and can still be read.*everything is kept twice/,
    );
    expect(full.problem).toBeNull();
    expect(await full.lock.isOn()).toBe(false);
    expect(await everything(full.repository)).toEqual(before);
    expect(await shelves.list()).toEqual([1]);

    const whole = await open();
    expect(await whole.lock.isOn()).toBe(true);
    expect(await everything(whole.repository)).toEqual(before);

    await whole.lock.turnOff(passphrase);
    const stillOn = await open(undefined, fullShelves(shelves));
    expect(stillOn.lock.problem!.message).toMatch(/^The lock is still on/);
    expect(await stillOn.lock.isOn()).toBe(true);
    expect(await everything(stillOn.repository)).toEqual(before);
    expect(await onDisk(shelves)).not.toContain('Grey Otter 3');
    expect(await everything((await open()).repository)).toEqual(before);
    expect(await lock.isOn()).toBe(false);
  });

  it('reports a changed record, and stays open for the rest; turning it off keeps the record as it is', async () => {
    const { shelf, open, locked } = await filledDevice();
    await locked();
    const { records } = await shelf();
    const { sealed } = (await records.get('visits', session.id)) as { sealed: Uint8Array };
    sealed[40]! ^= 1;
    await records.apply([{ put: 'visits', key: session.id, value: { sealed } }]);
    const { repository, lock } = await open();
    await expect(repository.sessions.find(session.id)).rejects.toMatchObject({ reason: 'damaged' });
    expect((await repository.sessions.list()).unreadable).toHaveLength(1);
    expect(await repository.plans.find('plan')).toBe('{"patient":"Grey Otter 3"}');
    await lock.turnOff(passphrase);
    await open();
    expect(await (await shelf()).records.get('visits', session.id)).toEqual({ damaged: { sealed } });
  });

  it('refuses records and videos that were put there in plain', async () => {
    const { shelf, open, locked } = await filledDevice();
    const { facts } = (await (await locked()).repository.recordings.find(recording.id))!;
    const { records, videos } = await shelf();
    await records.apply([{ put: 'notes', key: 'keys', value: 'a planted key' }]);
    await records.apply([{ put: 'plans', key: 'plan', value: { id: 'plan', savedAt: '', text: '{}' } }]);
    await (await videos.create(facts.video!)).write(new Blob(['another video']));
    const { repository } = await open();
    // Nothing is read of it, and the key's owner hears that it can't be.
    expect((await repository.notes.read()).get('keys')).toBe('');
    await expect(repository.plans.find('plan')).rejects.toMatchObject({ reason: 'damaged' });
    expect((await repository.videos.read(facts.video!))!.size).toBe(pictures.length);
  });

  it.each(['opening', 'sealed'] as const)('refuses a step that was changed to "%s"', async (step) => {
    const { shelf, shelves, open, locked } = await filledDevice();
    const { lock } = await locked();
    if (step === 'sealed') await lock.turnOff(passphrase);
    const { records } = await shelf();
    const stored = (await records.get('lock', 'lock')) as object;
    await records.apply([{ put: 'lock', key: 'lock', value: { ...stored, step } }]);
    await expect(open()).rejects.toMatchObject({ reason: 'lock-changed' });
    expect(await onDisk(shelves)).not.toContain('Grey Otter 3');
  });

  it.each([
    ['damaged', { step: 'sealed' }],
    ['gone', null],
  ])('asks what to do where the lock is %s, and deleting everything works', async (_, value) => {
    const { shelf, shelves, open, locked } = await filledDevice();
    await locked();
    const { records } = await shelf();
    await records.apply([
      value === null ? { remove: 'lock', key: 'lock' } : { put: 'lock', key: 'lock', value },
    ]);
    await expect(open()).rejects.toMatchObject({ reason: 'lock-damaged' });
    const { repository } = await open(async (device) => {
      expect(device.isDamaged).toBe(true);
      await device.eraseAll();
    });
    await repository.sessions.save(session);
    expect((await repository.sessions.list()).found).toEqual([session]);
    expect(await shelves.list()).toHaveLength(1);
    expect((await open(() => Promise.reject(new Error('asked')))).problem).toBeNull();
  });

  it('leaves only the way to start afresh where the passphrase is lost', async () => {
    const { shelf, open, locked } = await filledDevice();
    await locked();
    const { repository } = await open((device) => device.eraseAll());
    expect(await repository.sessions.list()).toEqual({ found: [], unreadable: [] });
    const { records, videos } = await shelf();
    for (const table of tableNames)
      expect(await records.keys(table)).toEqual(table === 'lock' ? ['ready'] : []);
    expect(await videos.list()).toEqual([]);
  });

  it('takes over what an earlier version locked, plain and sealed side by side', async () => {
    const { shelves, shelf, before, locked, open } = await filledDevice();
    await locked();
    const { records, videos } = await shelf();
    const earlier = createTestShelves();
    const [to, toVideos] = [await earlier.openRecords(0), await earlier.openVideos(0)];
    for (const table of tableNames.filter((table) => table !== 'lock'))
      for (const { key, value } of await records.list(table)) await to.apply([{ put: table, key, value }]);
    for (const { name } of await videos.list())
      await (await toVideos.create(name)).write((await videos.read(name))!);
    const { sealedKey } = (await records.get('lock', 'lock')) as { sealedKey: Uint8Array };
    await to.apply([
      { put: 'lock', key: 'lock', value: { state: 'sealing', sealedKey } },
      { put: 'notes', key: 'draft', value: 'Grey Otter 3' },
    ]);
    to.close();
    const opened = await open(undefined, earlier);
    expect(await opened.lock.isOn()).toBe(true);
    expect(await everything(opened.repository)).toEqual(before);
    expect(await earlier.list()).toEqual([1]);
    expect(await onDisk(earlier)).not.toContain('Grey Otter 3');
    expect(await shelves.list()).toEqual([2]);
  });

  it('is refused by pages that have nobody to ask', async () => {
    const { shelves, lock } = await filledDevice();
    await lock.turnOn(passphrase);
    await expect(openRepository(shelves)).rejects.toMatchObject({ reason: 'locked' });
  });
});
