import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { LockedDevice } from '#device/storage/lock/openLocked';
import { createMemoryVideos } from '#device/storage/memoryVideos';
import { openRepository } from '#device/storage/openRepository';
import { tableNames } from '#device/storage/records';
import type { Videos } from '#device/storage/videos';
import { createTestDevice } from '../../../../support/openTestRepository';
import { quickScrypt } from '../../../../support/quickScrypt';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';
import { smallSetStart } from '../../../../support/smallSet';

const passphrase = 'otter river stone lamp';
const recording = smallRecording();
const session = { ...smallSession(), sets: [{ ...smallSession().sets[0]!, sessionId: recording.id }] };
const cutId = '5f0c6a52-6b0c-4c1e-9a43-0f2d6a1b7c90';
const pictures = Uint8Array.from({ length: 2_300_000 }, (_, index) => index % 251);

/** A device with a visit, its video, a plan, notes, and a set that was broken off. */
async function filledDevice() {
  const device = createTestDevice();
  let asked = 0;
  const answer = (words: string) => async (locked: LockedDevice) => {
    asked++;
    await locked.unlock(words, () => undefined);
  };
  const open = async (ask = answer(passphrase), videos: Videos = device.videos) => {
    const opened = await openRepository(
      {
        openRecords: device.openRecords,
        openVideos: () => Promise.resolve(videos),
        scryptWorkFactor: quickScrypt,
      },
      ask,
    );
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
  return { device, repository, lock, open, answer, askedCount: () => asked };
}

/** Everything that lies on the device, as text. */
async function onDisk({ openRecords, videos }: ReturnType<typeof createTestDevice>) {
  const records = await openRecords();
  let text = '';
  for (const table of tableNames)
    for (const { value } of await records.list(table))
      text += JSON.stringify(value, (_, field: unknown) =>
        field instanceof Uint8Array ? new TextDecoder('latin1').decode(field) : field,
      );
  for (const { name } of await videos.list()) {
    const bytes = new Uint8Array(await (await videos.read(name))!.arrayBuffer());
    text += new TextDecoder('latin1').decode(bytes);
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

describe('the passphrase lock', () => {
  it('seals all that is kept, at the next opening, and gives it back the same', async () => {
    const { device, repository, lock, open, askedCount } = await filledDevice();
    const before = await everything(repository);
    expect(await onDisk(device)).toContain('Grey Otter 3');
    expect(await onDisk(device)).toContain(aPicture);

    await lock.turnOn(passphrase);
    const again = await open();
    expect(again.problem).toBeNull();
    expect(askedCount()).toBe(1);
    expect(await everything(again.repository)).toEqual(before);
    const disk = await onDisk(device);
    for (const plain of ['Grey Otter 3', session.patient, recording.setup.task, aPicture])
      expect(disk).not.toContain(plain);
  });

  it('seals what is kept later, pieces of a recording too', async () => {
    const { device, lock, open } = await filledDevice();
    await lock.turnOn(passphrase);
    const { repository } = await open();
    const start = { ...smallSetStart(), id: crypto.randomUUID() };
    const set = await repository.beginSet(start, () => undefined);
    await Promise.all([1, 2, 3].map((at) => set.video!.write(new Blob([`second ${at} of the film, `]))));
    set.addRow({ timeMs: 40, row: new Float32Array(99).fill(0.25) });
    await set.flush();
    expect(await onDisk(device)).not.toContain('of the film');
    const { video, rows } = await repository.readInterrupted(start.id);
    expect(await video!.text()).toBe('second 1 of the film, second 2 of the film, second 3 of the film, ');
    expect(rows[0]!.row![0]).toBe(0.25);
  });

  it('opens with no other passphrase, and with another one after it was changed', async () => {
    const { lock, open, answer } = await filledDevice();
    await lock.turnOn(passphrase);
    await expect(open(answer('another river stone lamp'))).rejects.toMatchObject({
      reason: 'wrong-passphrase',
    });
    await expect(lock.changePassphrase('wrong words here, all', 'x')).rejects.toMatchObject({
      reason: 'wrong-passphrase',
    });
    await lock.changePassphrase(passphrase, 'four quite other words');
    await expect(open()).rejects.toMatchObject({ reason: 'wrong-passphrase' });
    expect((await open(answer('four quite other words'))).problem).toBeNull();
  });

  it('can be removed, which leaves everything as before', async () => {
    const { device, repository, lock, open, askedCount } = await filledDevice();
    const before = await everything(repository);
    await lock.turnOn(passphrase);
    await (await open()).lock.turnOff(passphrase);
    const opened = await open();
    expect(await opened.lock.isOn()).toBe(false);
    expect(await everything(opened.repository)).toEqual(before);
    expect(await onDisk(device)).toContain('Grey Otter 3');
    const asked = askedCount();
    await open();
    expect(askedCount()).toBe(asked);
  });

  it('resumes sealing or opening that was cut off: nothing is lost, and the next opening finishes it', async () => {
    const { device, repository, lock, open } = await filledDevice();
    const before = await everything(repository);
    // The device is full when the video's second piece comes.
    const full: Videos = {
      ...device.videos,
      async create(name) {
        const writer = await device.videos.create(name);
        let pieces = 0;
        return {
          ...writer,
          write: (chunk) =>
            ++pieces > 1
              ? Promise.reject(new DOMException('full', 'QuotaExceededError'))
              : writer.write(chunk),
        };
      },
    };
    await lock.turnOn(passphrase);
    for (const direction of ['on', 'off'] as const) {
      const cut = await open(undefined, full);
      expect(cut.problem, direction).toMatchObject({ reason: 'full' });
      expect(await everything(cut.repository), direction).toEqual(before);
      const whole = await open();
      expect(whole.problem, direction).toBeNull();
      expect(await everything(whole.repository), direction).toEqual(before);
      if (direction === 'on') await whole.lock.turnOff(passphrase);
      // The way back writes a video in one piece, which is refused as well.
      full.create = () => Promise.reject(new DOMException('full', 'QuotaExceededError'));
    }
    expect(await lock.isOn()).toBe(false);
  });

  it('reports a changed record, and stays open for the rest', async () => {
    const { device, lock, open } = await filledDevice();
    await lock.turnOn(passphrase);
    await open();
    const records = await device.openRecords();
    const { sealed } = (await records.get('visits', session.id)) as { sealed: Uint8Array };
    sealed[40]! ^= 1;
    await records.apply([{ put: 'visits', key: session.id, value: { sealed } }]);
    const { repository } = await open();
    await expect(repository.sessions.find(session.id)).rejects.toMatchObject({ reason: 'damaged' });
    expect(await repository.plans.find('plan')).toBe('{"patient":"Grey Otter 3"}');
  });

  it('leaves only the way to start afresh where the passphrase is lost', async () => {
    const { device, lock, open } = await filledDevice();
    await lock.turnOn(passphrase);
    const { repository } = await open((locked) => locked.eraseAll());
    expect(await repository.sessions.list()).toEqual({ found: [], unreadable: [] });
    const records = await device.openRecords();
    for (const table of tableNames) expect(await records.keys(table)).toEqual([]);
    expect(await createMemoryVideos().list()).toEqual(await device.videos.list());
  });

  it('is refused by pages that have nobody to ask', async () => {
    const { device, lock } = await filledDevice();
    await lock.turnOn(passphrase);
    await expect(
      openRepository({ openRecords: device.openRecords, openVideos: () => Promise.resolve(device.videos) }),
    ).rejects.toMatchObject({ reason: 'locked' });
  });
});
