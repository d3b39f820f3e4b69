import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { openSenderKeys } from '#device/storage/senderKeys';
import type { VideoPart } from '#documents/parcel/videoPart';
import { recordingHead } from '#documents/recording/recordingHead';
import { emptyReview } from '#documents/recording/reviewSchema';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { asReceived } from '#features/sharing/store/asReceived';
import { createClinic } from '#features/sharing/store/createClinic';
import { createSending } from '#features/sharing/store/createSending';
import { deviceSigner } from '#shell/deviceSigner';
import { tombstoneName } from '#shell/receivedNotes';
import type { KeyPair } from '#shell/seal';
import { keyWords } from '#words/keyWords';
import { createTestDevice } from '../../../../support/openTestRepository';
import { quickScrypt } from '../../../../support/quickScrypt';
import { smallItem, smallPlan } from '../../../../support/smallPlan';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';
import { smallSetStart } from '../../../../support/smallSet';

const recording = smallRecording();
const session = { ...smallSession(), sets: [{ ...smallSession().sets[0]!, sessionId: recording.id }] };
/** The recording as it is judged where it arrives. */
const plan = smallPlan({
  id: session.planId!,
  patient: session.patient,
  items: [smallItem({ task: recording.setup.task, limits: recording.limits })],
});
const derivedHere = asReceived(
  { session, sets: [{ recording, video: null }], sentAt: null, sender: null },
  plan,
).sets[0]!.recording;
const video = new Blob([new Uint8Array(3000).fill(7)], { type: 'video/webm' });

/** A patient's device with one visit and its video, and a clinic's device with a key. */
async function twoDevices() {
  const home = await createTestDevice().open();
  const set = await home.beginSet(smallSetStart(), () => undefined);
  await set.video!.write(video);
  await set.endVideo();
  await set.finish(recording, 'done', session);

  const saved: File[] = [];
  const homeClock = { now: new Date('2026-05-06T07:08:09Z') };
  const device = { keys: openSenderKeys({ indexedDB: new IDBFactory(), IDBKeyRange }), canSign: true };
  const sending = createSending({
    openRepository: () => Promise.resolve({ repository: home, problem: null }),
    coveringFault: () => Promise.resolve(null),
    coverVideo: () => Promise.reject(new Error('No video is written here.')),
    share: () => Promise.resolve(false),
    signerFor: (planId) => (device.canSign ? deviceSigner(device.keys)(planId) : Promise.resolve(null)),
    saveBlob: (fileName, blob) => void saved.push(new File([blob], fileName)),
    now: () => homeClock.now,
  });
  const clinicRepository = await createTestDevice().open();
  await clinicRepository.plans.save(plan.id, JSON.stringify(plan));
  let keys: KeyPair[] = [];
  const clock = { now: new Date('2026-05-06T07:08:09Z') };
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
      now: () => clock.now,
      scryptWorkFactor: quickScrypt,
    });
  const clinic = openClinic();
  await clinic.makeKey();
  const recipient = clinic.store.getState().recipient!;
  const send = async (part: VideoPart) => {
    await sending.choose(session.id, part);
    await sending.send(session.id, [recipient]);
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
    clock,
    homeClock,
    stopSigning: () => void (device.canSign = false),
    /** From here on the patient sends from another device. */
    changeDevice: () => void (device.keys = openSenderKeys({ indexedDB: new IDBFactory(), IDBKeyRange })),
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
    expect(found.recording).toEqual(derivedHere);
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
    await anew.openFiles([new File(['ftypisom'], 'knee.mp4')]);
    expect(anew.store.getState().incoming[1]).toMatchObject({
      state: 'refused',
      sentence: expect.stringMatching(
        /not a sent session.*Open videos and recordings from the start/,
      ) as string,
    });
    await anew.restore(backups[0]!, 'other words');
    expect(anew.store.getState().sentence).toMatch(/does not open/);
    await anew.restore(backups[0]!, 'four words in a row');
    expect(anew.store.getState()).toMatchObject({ recipient, sentence: null });
    await anew.openFiles(saved);
    expect(anew.store.getState().incoming[2]!.state).toBe('known');
  });

  it('says what is missing where the session is missing', async () => {
    const { sending, recipient } = await twoDevices();
    await sending.choose('11111111-2222-4333-8444-555555555555', 'whole');
    await sending.send('11111111-2222-4333-8444-555555555555', [recipient]);
    expect(sending.store.getState()).toMatchObject({ state: 'failed' });
    expect(sending.store.getState().sentence).not.toBeNull();
  });

  it('is judged where it arrives, whatever the sender’s device says', async () => {
    const { home, send, saved, clinic, clinicRepository } = await twoDevices();
    const { derived, ...head } = recordingHead(recording);
    const repetitions = derived.repetitions.map((repetition) => ({
      ...repetition,
      judgement: {
        ...repetition.judgement,
        alignmentScorePct: repetition.judgement.alignmentScorePct === null ? null : 12.5,
      },
    }));
    expect(repetitions).not.toEqual(derived.repetitions);
    const reviewed = { at: '2026-05-06T07:00:00.000Z', by: 'somebody' };
    const { edition } = (await home.recordings.findHead(recording.id))!;
    await home.recordings.update(
      { ...head, derived: { ...derived, repetitions }, review: { ...emptyReview, reviewed } },
      edition,
    );
    await send('none');
    await clinic.openFiles(saved);
    const found = (await clinicRepository.recordings.find(recording.id))!.recording;
    expect(found.derived).toEqual(derivedHere.derived);
    expect(found.review).toBeUndefined();
  });

  it('arrives where nothing was done: what was said is sent, but no word in the therapist’s name', async () => {
    const { home, sending, send, saved, clinic, clinicRepository } = await twoDevices();
    const signed = { visitId: session.id, at: '2026-05-06T07:00:00.000Z', who: 'AB' };
    const check = { asked: 'new', signs: ['calf'], takenBack: [] } satisfies SessionDocument['check'];
    const professional = { ...signed, by: 'professional' as const };
    const said = { ...session, sets: [], check, settles: [professional] };
    await home.sessions.save({ ...said, settles: [professional, { ...signed, by: 'therapist' }] });
    await sending.look(session.id);
    expect(sending.store.getState().chosen).toBe('none');
    await send('none');
    await clinic.openFiles(saved);
    expect(await clinicRepository.sessions.find(session.id)).toEqual(said);
  });

  it('is judged by the limits of the plan as it is kept here, whatever limits come with it', async () => {
    const { home, send, saved, clinic, clinicRepository } = await twoDevices();
    const { edition } = (await home.recordings.findHead(recording.id))!;
    const wide = { 'knee-angle': { least: -30, most: 30 } };
    await home.recordings.update({ ...recordingHead(recording), limits: wide }, edition);
    await send('none');
    await clinic.openFiles(saved);
    const found = (await clinicRepository.recordings.find(recording.id))!.recording;
    expect(found.limits).toEqual(recording.limits);
    expect(found.derived).toEqual(derivedHere.derived);
  });

  it('tells which device it comes from: the first one, the same, another', async () => {
    const { home, send, saved, clinic, sending, changeDevice, last } = await twoDevices();
    await sending.look(session.id);
    const words = keyWords(sending.store.getState().senderKey!);
    expect(words.split(' ')).toHaveLength(5);
    await send('none');
    await clinic.openFiles([saved.at(-1)!]);
    expect(last()).toMatchObject({ state: 'kept', sender: expect.stringContaining(words) as string });

    await home.sessions.save({ ...session, remark: 'Said later.' });
    await send('none');
    await clinic.openFiles([saved.at(-1)!]);
    expect(last()).toMatchObject({ state: 'asks', sender: 'It comes from the same device as before.' });

    changeDevice();
    await send('none');
    await clinic.openFiles([saved.at(-1)!]);
    expect(last()).toMatchObject({
      state: 'doubtful',
      sentence: expect.stringMatching(/another device than before/) as string,
    });
    await clinic.decide(2, true);
    expect(last().state).toBe('asks');
    await clinic.decide(2, true);
    expect(last().state).toBe('kept');
    await clinic.openFiles([saved.at(-1)!]);
    expect(last()).toMatchObject({ state: 'known', sender: 'It comes from the same device as before.' });
  });

  it('says so where it is not signed', async () => {
    const { send, saved, clinic, stopSigning, last } = await twoDevices();
    stopSigning();
    await send('none');
    await clinic.openFiles([saved.at(-1)!]);
    expect(last()).toMatchObject({
      state: 'kept',
      sender: expect.stringMatching(/^It is not signed/) as string,
    });
  });

  it('is asked about where it is suddenly not signed any more', async () => {
    const { home, send, saved, clinic, stopSigning, last } = await twoDevices();
    await send('none');
    await clinic.openFiles([saved.at(-1)!]);
    stopSigning();
    await home.sessions.save({ ...session, remark: 'Said later.' });
    await send('none');
    await clinic.openFiles([saved.at(-1)!]);
    expect(last()).toMatchObject({
      state: 'doubtful',
      sentence: expect.stringMatching(/not signed.*Earlier ones were signed/) as string,
    });
  });

  it('is asked about where it follows no plan of this device, or that of somebody else', async () => {
    const { home, send, saved, clinic, clinicRepository, last } = await twoDevices();
    await home.sessions.save({ ...session, patient: 'Somebody Else' });
    await send('none');
    await clinic.openFiles([saved.at(-1)!]);
    expect(last()).toMatchObject({
      state: 'doubtful',
      sentence: `It follows the plan of ${session.patient}, under another pseudonym.`,
    });
    await home.sessions.save({ ...session, planId: '11111111-2222-4333-8444-555555555555' });
    await send('none');
    await clinic.openFiles([saved.at(-1)!]);
    expect(last().sentence).toMatch(/no plan that was written on this device/);
    await clinic.decide(1, false);
    expect(last().state).toBe('left');
    expect((await clinicRepository.sessions.list()).found).toEqual([]);
  });

  it('is asked about where it was deleted here, and stays once it was accepted', async () => {
    const { send, saved, clinic, clinicRepository, last } = await twoDevices();
    await send('none');
    await clinicRepository.notes.write(tombstoneName(session.id), '2026-05-05');
    await clinic.openFiles(saved);
    expect(last()).toMatchObject({
      state: 'doubtful',
      sentence: 'You deleted this session here on 2026-05-05.',
    });
    await clinic.decide(0, true);
    expect(last().state).toBe('kept');
    expect((await clinicRepository.notes.read()).has(tombstoneName(session.id))).toBe(false);
  });

  it('is asked about where a later version of it is kept here', async () => {
    const { home, send, saved, clinic, homeClock, last } = await twoDevices();
    await send('none');
    homeClock.now = new Date('2026-05-06T07:30:00Z');
    await home.sessions.save({ ...session, remark: 'Said later.' });
    await send('none');
    await clinic.openFiles([saved[1]!]);
    expect(last().state).toBe('kept');
    await clinic.openFiles([saved[0]!]);
    expect(last()).toMatchObject({
      state: 'doubtful',
      sentence: 'It was sent before the one that is kept here.',
    });
  });

  it('is refused where its date can’t be', async () => {
    const { send, saved, clinic, clock, last } = await twoDevices();
    await send('none');
    clock.now = new Date('2026-05-05T07:08:08Z'); // A day and a second before it was sent.
    await clinic.openFiles(saved);
    expect(last()).toMatchObject({
      state: 'refused',
      sentence: expect.stringMatching(/future, or before 2020/) as string,
    });
    clock.now = new Date('2026-05-05T07:08:10Z');
    await clinic.openFiles(saved);
    expect(last().state).toBe('kept');
  });

  it('is kept under the plain form of its pseudonym', async () => {
    const { home, send, saved, clinic, clinicRepository, last } = await twoDevices();
    await home.sessions.save({ ...session, patient: `\u202e${session.patient.replace('-', '\u200b-')} ` });
    await send('none');
    await clinic.openFiles(saved);
    expect(last().state).toBe('kept');
    expect((await clinicRepository.sessions.find(session.id))!.patient).toBe(session.patient);
  });
});
