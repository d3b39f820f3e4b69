import { describe, expect, it } from 'vitest';
import type { VideoPart } from '#documents/parcel/videoPart';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { createSending, type SendingWorld } from '#features/sharing/store/createSending';
import { unpackParcel } from '#features/sharing/store/parcel';
import { standingOf } from '#features/sharing/store/saveParcel';
import { newKeyPair, unseal } from '#shell/seal';
import { kneeJudged } from '../../../../support/kneeJudgement';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';
import { smallSetStart } from '../../../../support/smallSet';

const recording = smallRecording();
const session = { ...smallSession(), sets: [{ ...smallSession().sets[0]!, sessionId: recording.id }] };
const video = new Blob([new Uint8Array(3000).fill(7)], { type: 'video/webm' });
const covered = (bytes: number) =>
  new File([new Uint8Array(bytes).fill(9)], 'x.webm', { type: 'video/webm' });
const pair = await newKeyPair();

/** The same session with a verdict for each of its repetitions. */
const judged = (...verdicts: ('in' | 'out')[]): RecordingDocument => ({
  ...recording,
  derived: {
    ...recording.derived,
    repetitions: recording.derived.repetitions.map((repetition, index) => ({
      ...repetition,
      judgement: kneeJudged({
        verdict: verdicts[index] ?? 'in',
        worst: repetition.ranges['knee-angle'].max,
        alignmentScorePct: 80,
      }),
    })),
  },
});

/** A device that keeps one set, and what is written of its video. */
async function openDevice(change: Partial<SendingWorld> = {}, kept = judged('out'), hasVideo = true) {
  const repository = await createTestDevice().open();
  const start = { ...smallSetStart(), ...(hasVideo ? {} : { videoType: null }) };
  const set = await repository.beginSet(start, () => undefined);
  await set.video?.write(video);
  await set.endVideo();
  await set.finish(kept, hasVideo ? 'done' : 'impossible', session);
  const saved: Blob[] = [];
  const sending = createSending({
    openRepository: () => Promise.resolve({ repository, problem: null }),
    coveringFault: () => Promise.resolve(null),
    coverVideo: () => Promise.resolve(covered(1234)),
    share: () => Promise.resolve(false),
    saveBlob: (_, blob) => void saved.push(blob),
    signerFor: () => Promise.resolve(null),
    now: () => new Date('2026-05-06T07:08:09Z'),
    ...change,
  });
  await sending.look(session.id);
  const state = () => sending.store.getState();
  return {
    sending,
    repository,
    saved,
    state,
    choose: (part: VideoPart) => sending.choose(session.id, part),
    send: () => sending.send(session.id, [pair.recipient]),
    opened: async () => unpackParcel(await unseal(pair.identity, saved.at(-1)!)),
  };
}

const aborted = (signal: AbortSignal) =>
  new Promise<never>((_, reject) => signal.addEventListener('abort', () => reject(signal.reason as Error)));

describe('createSending(world)', { timeout: 60_000 }, () => {
  it('gives the size of each choice beforehand, as an estimate where it is still to be prepared', async () => {
    const { state } = await openDevice();
    const { none, whole, ...parts } = state().choices!;
    expect(whole.bytes - none.bytes).toBe(3000);
    expect([none.isExact, whole.isExact]).toEqual([true, true]);
    expect(parts['without-head']).toEqual({ bytes: whole.bytes, isExact: false, fault: null });
    expect(state().outOfLine).toEqual({ count: 1, of: 2 });
    // The first repetition with a second around it, of 8.5 s.
    const { startMs, endMs } = recording.derived.repetitions[0]!.events;
    const share = (endMs - startMs + 1000) / 8500;
    expect(parts['out-of-line'].bytes - none.bytes).toBe(Math.round(3000 * share));
  });

  it('asks for no choice where no set was recorded', async () => {
    const { sending, state, repository, opened } = await openDevice();
    const unfilmed = {
      ...session,
      id: '3f4a6d0e-93ff-4a8e-8f8d-5a6c1b2e7d19',
      isUnfilmed: true,
      sets: session.sets.map((set) => ({ ...set, sessionId: null })),
    };
    await repository.sessions.save(unfilmed);
    expect(state().chosen).toBeNull();
    await sending.look(unfilmed.id);
    expect(state().chosen).toBe('none');
    await sending.send(unfilmed.id, [pair.recipient]);
    expect(await opened()).toMatchObject({ session: unfilmed, sets: [] });
  });

  it('prepares a part, says how large it has become, and sends that and nothing else', async () => {
    const progress: (number | null)[] = [];
    const { sending, state, choose, send, opened, saved } = await openDevice({
      coverVideo: (file, cover, { words, onProgress }) => {
        expect(file.size).toBe(3000);
        expect(cover(0)).toBe(Infinity);
        expect(words).toMatch(/not sent/);
        onProgress(0.5);
        return Promise.resolve(covered(1234));
      },
    });
    sending.store.subscribe(({ progress: share }) => progress.push(share));
    await choose('out-of-line');
    expect(progress).toContain(0.5);
    expect(saved).toEqual([]);
    const { none, 'out-of-line': shown } = state().choices!;
    expect(shown).toMatchObject({ isExact: true });
    expect(state().ready!.map(({ size }) => size)).toEqual([1234]);
    // The video, and what says that it follows.
    expect(shown.bytes - none.bytes).toBeGreaterThan(1234);
    expect(shown.bytes - none.bytes).toBeLessThan(1234 + 300);
    await send();
    expect(state().state).toBe('saved');
    const [set] = (await opened()).sets;
    expect(set!.video!.size).toBe(1234);
    expect(set!.recording).toEqual(judged('out'));
  });

  it('says what is not possible, and why', async () => {
    const faults = async (device: ReturnType<typeof openDevice>) => {
      const choices = (await device).state().choices!;
      return [choices['out-of-line'].fault, choices['without-head'].fault, choices.whole.fault];
    };
    expect(await faults(openDevice({}, judged('in', 'in')))).toEqual([
      'No repetition was out of line this time.',
      null,
      null,
    ]);
    expect(await faults(openDevice({ coveringFault: () => Promise.resolve('Not here.') }))).toEqual([
      'Not here.',
      'Not here.',
      null,
    ]);
    const noVideo = 'No video of this session was kept.';
    expect(await faults(openDevice({}, judged('out'), false))).toEqual([noVideo, noVideo, noVideo]);
  });

  it('stops preparing when asked to, and nothing is chosen or sent then', async () => {
    const { sending, state, choose, send, saved } = await openDevice({
      coverVideo: (_, __, { signal }) => aborted(signal),
    });
    const preparing = choose('without-head');
    await expect.poll(() => state().state).toBe('preparing');
    await send();
    sending.stopPreparing();
    await preparing;
    expect(state()).toMatchObject({ state: 'idle', chosen: null, progress: null });
    await send();
    expect(saved).toEqual([]);
  });

  it('sends the last choice where one was changed while it was prepared', async () => {
    const { state, choose, send, opened } = await openDevice({
      coverVideo: (_, __, { signal }) => aborted(signal),
    });
    const preparing = choose('without-head');
    await expect.poll(() => state().state).toBe('preparing');
    await choose('none');
    await preparing;
    expect(state()).toMatchObject({ state: 'idle', chosen: 'none', progress: null });
    await send();
    expect((await opened()).sets[0]!.video).toBeNull();
  });

  it('says why it could not be prepared; all that is kept stays, and another choice can be sent', async () => {
    const { repository, state, choose, send, opened } = await openDevice({
      coverVideo: () => Promise.reject(new Error('The disk is full')),
    });
    await choose('without-head');
    expect(state()).toMatchObject({ state: 'failed', chosen: null, progress: null });
    expect(state().sentence).toContain('The disk is full');
    expect((await repository.recordings.find(recording.id))!.recording).toEqual(judged('out'));
    expect((await repository.videos.list())[0]!.bytes).toBe(3000);
    await choose('whole');
    await send();
    expect((await opened()).sets[0]!.video!.size).toBe(3000);
  });

  it('drops what was prepared from numbers that have changed since', async () => {
    const { sending, state, choose, send, saved } = await openDevice();
    await choose('without-head');
    await sending.look(session.id);
    expect(state()).toMatchObject({ chosen: null });
    expect(state().sentence).toMatch(/choose again/);
    await send();
    expect(saved).toEqual([]);
    await choose('whole');
    expect(state().ready).toBeNull();
    await sending.look(session.id);
    expect(state()).toMatchObject({ chosen: 'whole', sentence: null });
  });

  it('chooses beforehand what the therapist wishes for, and prepares it', async () => {
    const { sending, state } = await openDevice();
    await sending.look(session.id, 'without-head');
    expect(state()).toMatchObject({ state: 'idle', chosen: 'without-head', sentence: null });
    expect(state().ready).toHaveLength(1);
    // From numbers that have changed since, too.
    await sending.look(session.id, 'without-head');
    expect(state()).toMatchObject({ chosen: 'without-head', sentence: null });
    expect(state().ready).toHaveLength(1);
  });

  it('never chooses more than was wished for', async () => {
    const { sending, state } = await openDevice({}, judged('in'));
    await sending.look(session.id, 'out-of-line');
    expect(state()).toMatchObject({ chosen: 'none', ready: null });
  });

  it('leaves what the patient has chosen, whatever is wished for', async () => {
    const { sending, state, choose } = await openDevice();
    await choose('none');
    await sending.look(session.id, 'whole');
    expect(state().chosen).toBe('none');
    await choose('without-head');
    await sending.look(session.id, 'whole');
    expect(state()).toMatchObject({ chosen: null });
    expect(state().sentence).toMatch(/choose again/);
  });

  it('begins with nothing of another session', async () => {
    const { sending, repository, state, choose, send } = await openDevice();
    await choose('whole');
    await send();
    const other = { ...session, id: '0b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d77' };
    await repository.sessions.save(other);
    await sending.look(other.id);
    expect(state()).toMatchObject({ sessionId: other.id, state: 'idle', chosen: null, sentAt: null });
  });

  it('sends once more when that is asked for', async () => {
    const { sending, saved, state, choose, send } = await openDevice();
    await choose('whole');
    await send();
    sending.sendAgain();
    expect(state()).toMatchObject({ state: 'idle', chosen: 'whole', sentAt: null });
    await send();
    expect(saved).toHaveLength(2);
  });

  it('sends another part of the same video as another version, and the same part as known', async () => {
    const { repository, choose, send, opened } = await openDevice();
    await choose('whole');
    await send();
    expect(await standingOf(await opened(), repository)).toEqual({ kind: 'known' });
    await choose('without-head');
    await send();
    expect(await standingOf(await opened(), repository)).toMatchObject({ kind: 'another-version' });
  });
});
