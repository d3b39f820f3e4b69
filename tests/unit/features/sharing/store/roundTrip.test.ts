import { describe, expect, it } from 'vitest';
import type { VideoPart } from '#documents/parcel/videoPart';
import { createClinic } from '#features/sharing/store/createClinic';
import { createSending } from '#features/sharing/store/createSending';
import type { KeyPair } from '#shell/seal';
import { createTestDevice } from '../../../../support/openTestRepository';
import { quickScrypt } from '../../../../support/quickScrypt';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';
import { smallSetStart } from '../../../../support/smallSet';

const recording = smallRecording();
const session = { ...smallSession(), sets: [{ ...smallSession().sets[0]!, sessionId: recording.id }] };
const video = new Blob([new Uint8Array(3000).fill(7)], { type: 'video/webm' });

/** A patient's device with one visit and its video, and a clinic's device with a key. */
async function twoDevices() {
  const home = await createTestDevice().open();
  const set = await home.beginSet(smallSetStart(), () => undefined);
  await set.video!.write(video);
  await set.endVideo();
  await set.finish(recording, 'done', session);

  const saved: File[] = [];
  const sending = createSending({
    openRepository: () => Promise.resolve({ repository: home, problem: null }),
    coveringFault: () => Promise.resolve(null),
    coverVideo: () => Promise.reject(new Error('No video is written here.')),
    share: () => Promise.resolve(false),
    saveBlob: (fileName, blob) => void saved.push(new File([blob], fileName)),
    now: () => new Date('2026-05-06T07:08:09Z'),
  });
  const clinicRepository = await createTestDevice().open();
  let keys: KeyPair[] = [];
  const backups: Blob[] = [];
  let kept = 0;
  clinicRepository.subscribe(({ kind }) => void (kept += kind === 'sessions' ? 1 : 0));
  const openClinic = () =>
    createClinic({
      openRepository: () => Promise.resolve({ repository: clinicRepository, problem: null }),
      firstKeys: keys,
      readKeys: () => Promise.resolve(keys),
      writeKeys(next) {
        keys = [...next];
        return Promise.resolve();
      },
      saveBlob: (_, blob) => void backups.push(blob),
      scryptWorkFactor: quickScrypt,
    });
  const clinic = openClinic();
  await clinic.makeKey();
  const recipient = clinic.store.getState().recipient!;
  const send = async (part: VideoPart) => {
    await sending.choose(session.id, part);
    await sending.send(session.id, recipient);
  };
  return {
    home,
    sending,
    send,
    saved,
    clinic,
    openClinic,
    clinicRepository,
    recipient,
    backups,
    keptCount: () => kept,
    forgetKeys: () => void (keys = []),
    last: () => clinic.store.getState().incoming.at(-1)!,
  };
}

describe('a session from the patient’s device to the clinic’s', () => {
  it('arrives with its numbers and its video, in a file without a name in it', async () => {
    const { sending, saved, clinic, clinicRepository, send, last } = await twoDevices();
    await sending.look(session.id);
    const { none, whole } = sending.store.getState().choices!;
    expect(whole.bytes - none.bytes).toBe(3000);
    await send('whole');
    expect(sending.store.getState().state).toBe('saved');
    expect(saved[0]!.name).toBe('overfoot-session-2026-05-06.age');
    expect(await saved[0]!.text()).not.toContain(session.patient);

    await clinic.openFiles(saved);
    expect(last()).toMatchObject({ state: 'kept', session: { patient: session.patient } });
    expect(await clinicRepository.sessions.find(session.id)).toEqual(session);
    const found = (await clinicRepository.recordings.find(recording.id))!;
    expect(found.recording).toEqual(recording);
    expect((await clinicRepository.videos.read(found.facts.video!))!.size).toBe(3000);
  });

  it('leaves the video at home where the patient does not agree', async () => {
    const { saved, send, clinic, clinicRepository } = await twoDevices();
    await send('none');
    await clinic.openFiles(saved);
    expect((await clinicRepository.recordings.find(recording.id))!.facts.video).toBeNull();
    expect(await clinicRepository.videos.list()).toEqual([]);
  });

  it('is known the second time, and replaced by another version only when somebody says so', async () => {
    const { home, saved, send, clinic, clinicRepository, last, keptCount } = await twoDevices();
    await send('none');
    await clinic.openFiles([saved[0]!]);
    const reported = keptCount();
    expect(reported).toBeGreaterThan(0);
    await clinic.openFiles([saved[0]!]);
    expect(last().state).toBe('known');
    expect(keptCount()).toBe(reported);

    await home.sessions.save({ ...session, remark: 'Said later.' });
    await send('none');
    await clinic.openFiles([saved[1]!]);
    expect(last().state).toBe('asks');
    await clinic.decide(2, false);
    expect(last().state).toBe('left');
    expect((await clinicRepository.sessions.find(session.id))!.remark).toBe(session.remark);
    await clinic.openFiles([saved[1]!]);
    await clinic.decide(3, true);
    expect(last().state).toBe('kept');
    expect((await clinicRepository.sessions.find(session.id))!.remark).toBe('Said later.');
  });

  it('is refused with a reason, and nothing of it is kept, where anything is not right', async () => {
    const { saved, send, clinic, clinicRepository } = await twoDevices();
    await send('whole');
    const bytes = new Uint8Array(await saved[0]!.arrayBuffer());
    const changed = bytes.slice();
    changed[changed.length - 40] = changed.at(-40)! ^ 1;
    await clinic.openFiles([
      new File([changed], 'changed.age'),
      new File([bytes.slice(0, -100)], 'cut.age'),
      new File(['<script>alert(1)</script>'], '../../x.age'),
    ]);
    const { incoming } = clinic.store.getState();
    expect(incoming.map(({ state }) => state)).toEqual(['refused', 'refused', 'refused']);
    for (const { sentence } of incoming) expect(sentence).toMatch(/^It.*\.$/);
    expect((await clinicRepository.sessions.list()).found).toEqual([]);
    expect((await clinicRepository.recordings.list()).found).toEqual([]);
    expect(await clinicRepository.videos.list()).toEqual([]);
  });

  it('opens with an earlier key, and on a new device with the key from its backup', async () => {
    const { saved, send, clinic, openClinic, forgetKeys, recipient, backups, last } = await twoDevices();
    await send('none');
    await clinic.backUp('short');
    expect(clinic.store.getState().sentence).toMatch(/at least 12 characters/);
    await clinic.backUp('four words in a row');
    await clinic.makeKey();
    expect(clinic.store.getState()).toMatchObject({ earlierKeys: 1 });
    await clinic.openFiles(saved);
    expect(last().state).toBe('kept');

    forgetKeys();
    const anew = openClinic();
    await anew.openFiles(saved);
    expect(anew.store.getState().incoming[0]).toMatchObject({
      state: 'refused',
      sentence: expect.stringMatching(/no key on this device/) as string,
    });
    await anew.restore(backups[0]!, 'other words');
    expect(anew.store.getState().sentence).toMatch(/does not open/);
    await anew.restore(backups[0]!, 'four words in a row');
    expect(anew.store.getState()).toMatchObject({ recipient, sentence: null });
    await anew.openFiles(saved);
    expect(anew.store.getState().incoming[1]!.state).toBe('known');
  });

  it('says what is missing where the session is missing', async () => {
    const { sending, recipient } = await twoDevices();
    await sending.choose('11111111-2222-4333-8444-555555555555', 'whole');
    await sending.send('11111111-2222-4333-8444-555555555555', recipient);
    expect(sending.store.getState()).toMatchObject({ state: 'failed' });
    expect(sending.store.getState().sentence).not.toBeNull();
  });
});
