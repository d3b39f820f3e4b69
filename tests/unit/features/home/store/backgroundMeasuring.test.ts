import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { keypointNames } from '#core/keypoints/keypointNames';
import { secondWeight } from '#core/looks/combineLooks';
import { Problem } from '#core/problem';
import type { FrameSource } from '#device/frames/frameSource';
import { createMarks, type Marks } from '#device/storage/marks';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { createBackgroundMeasuring } from '#features/home/store/backgroundMeasuring';
import { facts, fakeAdapters, film, recordingText } from '../../../../support/fakeAdapters';
import { createTestDevice } from '../../../../support/openTestRepository';

const idOf = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`;
const frames = film.track.timesMs.length;
const whole = parseRecording(recordingText);

/** What was tracked live: every third frame, with the small model. */
function liveRecording(digit: number): RecordingDocument {
  const { observed } = whole;
  const kept = observed.timesMs.flatMap((_, frame) => (frame % 3 === 0 ? [frame] : []));
  const pick = (values: number[]) => kept.flatMap((frame) => values.slice(frame * 33, frame * 33 + 33));
  return {
    ...whole,
    id: idOf(digit),
    createdAt: `2026-04-05T06:07:0${digit}.000Z`,
    note: `Invented, number ${digit}.`,
    observed: {
      ...observed,
      model: { ...observed.model, size: 'lite' },
      timesMs: kept.map((frame) => observed.timesMs[frame]!),
      xPx: pick(observed.xPx),
      yPx: pick(observed.yPx),
      score: pick(observed.score),
    },
  };
}

type Device = ReturnType<typeof createTestDevice>;

async function deviceWith(...digits: number[]): Promise<Device> {
  const device = createTestDevice();
  const repository = await device.open();
  for (const digit of digits) {
    const video = `${idOf(digit)}.webm`;
    await repository.recordings.save(liveRecording(digit), { visitId: null, video, fromVideo: 'waiting' });
    const writer = await device.videos.create(video);
    await writer.write(new Blob(['pictures']));
  }
  repository.close();
  return device;
}

async function openPage(device: Device, marks: Marks = createMarks(undefined)) {
  const repository = await device.open({ marks });
  const { adapters, world } = fakeAdapters();
  const parts = { ...adapters, repository };
  const background = createBackgroundMeasuring(parts);
  const state = background.store.getState;
  const rest = () => background.whenIdle();
  return { repository, background, world, parts, state, rest };
}

/** Resolves when the frame is asked for; from then on answers wait until `open` is called. */
function holdAt(frame: number, world: ReturnType<typeof fakeAdapters>['world']) {
  let open: () => void = () => undefined;
  const gate = new Promise<void>((resolve) => (open = resolve));
  const reached = new Promise<void>((resolve) => {
    world.beforeAnswer = async (asked) => {
      if (asked < frame) return;
      resolve();
      await gate;
    };
  });
  return { reached, open };
}

describe('createBackgroundMeasuring(parts)', () => {
  it('measures what waits from its video with the default model, oldest first, and keeps id and words', async () => {
    const device = await deviceWith(2, 1);
    const { repository, background, world, state, rest } = await openPage(device);
    const current: string[] = [];
    const most: number[] = [];
    background.store.subscribe(({ current: now }) => {
      if (now !== null && current.at(-1) !== now.id) current.push(now.id);
      if (now?.progress) most.push(now.progress.framesDone);
    });
    background.look();
    await rest();
    expect(current).toEqual([idOf(1), idOf(2)]);
    expect(state().done).toEqual([idOf(1), idOf(2)]);
    expect(Math.max(...most)).toBe(frames);
    expect(world.modelsLoaded).toEqual(['full', 'full']);
    expect([world.trackersStarted, world.trackersClosed, world.sourcesOpen]).toEqual([1, 1, 0]);
    const kept = (await repository.recordings.find(idOf(1)))!;
    expect(kept.facts.fromVideo).toBe('done');
    expect(kept.recording.observed).toMatchObject({
      model: { size: 'full', weights: 'made-up 4.5.6', backend: 'wasm' },
      timesMs: whole.observed.timesMs,
      xPx: whole.observed.xPx,
    });
    // The same joints; bands are narrower where two networks saw them.
    const peaks = ({ derived }: RecordingDocument) =>
      derived.repetitions.map(({ ranges }) => ranges['knee-angle'].max!.value);
    expect(peaks(kept.recording)).toEqual(peaks(whole));
    expect(kept.recording.derived.view).toEqual(whole.derived.view);
    expect(kept.recording).toMatchObject({
      id: idOf(1),
      note: 'Invented, number 1.',
      createdAt: '2026-04-05T06:07:01.000Z',
      limits: whole.limits,
    });
    expect(await (await device.openRecords()).list('rows', 'video:')).toEqual([]);
  });

  it('looks at the video more closely before it keeps what it measured', async () => {
    const { repository, background, world, state, rest } = await openPage(await deviceWith(1));
    world.secondAsidePx = 4;
    const closer: number[] = [];
    background.store.subscribe(({ current }) => {
      if (current?.progress?.closer) closer.push(current.progress.closer.framesDone);
    });
    background.look();
    await rest();
    expect(state().done).toEqual([idOf(1)]);
    const { observed } = (await repository.recordings.find(idOf(1)))!.recording;
    expect(observed.closer).toMatchObject({ network: 'MoveNet Thunder', frames: world.framesSeenCloser });
    expect(closer.at(-1)).toBe(world.framesSeenCloser);
    const [hip, nose] = [keypointNames.indexOf('left_hip'), keypointNames.indexOf('nose')];
    // Between the networks by their weights; the second is not asked for the face.
    expect(observed.xPx[hip]).toBeCloseTo(whole.observed.xPx[hip]! + 4 * secondWeight, 1);
    expect(observed.xPx[nose]).toBe(whole.observed.xPx[nose]);
  });

  it('takes the closer look on the way where a graphics processor does it', async () => {
    const { repository, background, world, state, rest } = await openPage(await deviceWith(1));
    world.backend = 'webgpu';
    background.look();
    await rest();
    expect(state().done).toEqual([idOf(1)]);
    const { observed } = (await repository.recordings.find(idOf(1)))!.recording;
    // 25 frames a second, and 7.5 looks: each fourth frame, once.
    expect(observed.closer!.frames).toBe(Math.ceil(frames / 4));
    expect(world.framesSeenCloser).toBe(Math.ceil(frames / 4));
  });

  it('keeps what the usual look saw where the second network can’t be loaded', async () => {
    const { repository, background, world, state, rest } = await openPage(await deviceWith(1));
    world.beforeSecond = () => Promise.reject(new Error('no connection'));
    background.look();
    await rest();
    expect(state()).toMatchObject({ done: [idOf(1)], problems: {} });
    const { observed } = (await repository.recordings.find(idOf(1)))!.recording;
    expect(observed.closer).toBeUndefined();
    expect(observed.xPx).toEqual(whole.observed.xPx);
  });

  it('lists at once what starts to wait, while another one is measured or it is paused', async () => {
    const { repository, background, world, state, rest } = await openPage(await deviceWith(1));
    const { reached, open } = holdAt(30, world);
    background.look();
    await reached;
    const add = async (digit: number) => {
      const beside = { visitId: null, video: null, fromVideo: 'waiting' as const };
      await repository.recordings.save(liveRecording(digit), beside);
      background.look();
    };
    await add(2);
    await expect.poll(() => state().waiting).toEqual([idOf(1), idOf(2)]);
    const paused = background.pause();
    open();
    await paused;
    await add(3);
    await expect.poll(() => state().waiting).toEqual([idOf(1), idOf(2), idOf(3)]);
    background.resume();
    await rest();
    expect(state().done).toEqual([idOf(1)]); // The others have no video.
  });

  it('leaves alone what does not wait', async () => {
    const device = await deviceWith(1);
    const { repository, background, world, rest } = await openPage(device);
    await repository.recordings.setFromVideo(idOf(1), 'declined');
    background.look();
    await rest();
    expect(world.trackersStarted).toBe(0);
    expect((await repository.recordings.find(idOf(1)))?.recording).toEqual(liveRecording(1));
  });

  it('continues where it was after the page was closed', async () => {
    const device = await deviceWith(1);
    const first = await openPage(device);
    const { reached } = holdAt(60, first.world);
    first.background.look();
    await reached;
    await first.background.close();
    const second = await openPage(device);
    const told: number[] = [];
    second.background.store.subscribe(({ current }) => {
      if (current?.progress) told.push(current.progress.framesDone);
    });
    second.background.look();
    await second.rest();
    expect(second.world.framesEstimated).toBe(frames - 60);
    expect(told[0]).toBe(61);
    const kept = await second.repository.recordings.find(idOf(1));
    expect(kept?.recording.observed.xPx).toEqual(whole.observed.xPx);
    expect(kept?.facts.fromVideo).toBe('done');
  });

  it('saves rows while it tracks: a killed page loses at most half a second of them', async () => {
    const device = await deviceWith(1);
    const first = await openPage(device);
    const { reached } = holdAt(60, first.world);
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    onTestFinished(() => void vi.useRealTimers());
    first.background.look();
    await reached; // ... and nothing is closed: the page is gone.
    await vi.advanceTimersByTimeAsync(500);
    vi.useRealTimers();
    const records = await device.openRecords();
    await expect.poll(async () => (await records.list('rows')).length).toBeGreaterThan(0);
    const second = await openPage(device);
    second.background.look();
    await second.rest();
    expect(second.world.framesEstimated).toBe(frames - 60);
  });

  it('frees the device while paused, and continues where it was', async () => {
    const device = await deviceWith(1);
    const { repository, background, world, state, rest } = await openPage(device);
    const { reached, open } = holdAt(50, world);
    background.look();
    await reached;
    const paused = background.pause();
    expect(world.trackersClosed).toBe(1);
    open();
    await paused;
    expect(state()).toMatchObject({ isPaused: true, current: null, waiting: [idOf(1)], problems: {} });
    const before = world.framesEstimated;
    background.look();
    await repository.recordings.list(); // What looking reads comes back before.
    expect(world.framesEstimated).toBe(before);
    background.resume();
    await rest();
    expect(world.framesEstimated).toBeLessThan(frames + 5);
    expect((await repository.recordings.find(idOf(1)))?.facts.fromVideo).toBe('done');
  });

  it('can be cancelled for one recording, which keeps its joints, and continues with the next', async () => {
    const device = await deviceWith(1, 2);
    const { repository, background, world, state, rest } = await openPage(device);
    const { reached, open } = holdAt(40, world);
    background.look();
    await reached;
    const cancelled = background.cancel(idOf(1));
    open();
    await cancelled;
    await rest();
    expect(state().done).toEqual([idOf(2)]);
    expect(await repository.recordings.find(idOf(1))).toMatchObject({
      recording: liveRecording(1),
      facts: { fromVideo: 'declined' },
    });
    await background.retry(idOf(1));
    await rest();
    expect(state().done).toEqual([idOf(2), idOf(1)]);
  });

  it('takes in what is kept while it works', async () => {
    const device = await deviceWith(1);
    const { repository, background, world, state, rest } = await openPage(device);
    const { reached, open } = holdAt(40, world);
    background.look();
    await reached;
    const video = `${idOf(2)}.webm`;
    await device.videos.create(video);
    await repository.recordings.save(liveRecording(2), { visitId: null, video, fromVideo: 'waiting' });
    background.look();
    open();
    await rest();
    expect(state().done).toEqual([idOf(1), idOf(2)]);
  });

  it('works in one tab at a time, and does nothing twice', async () => {
    const device = await deviceWith(1);
    const marks = createMarks(undefined);
    const one = await openPage(device, marks);
    const other = await openPage(device, marks);
    const { reached, open } = holdAt(40, one.world);
    one.background.look();
    await reached;
    other.background.look();
    await other.repository.recordings.list(); // What looking reads comes back before.
    expect(other.world.framesEstimated).toBe(0);
    open();
    await one.rest();
    await other.rest();
    expect(one.state().done).toEqual([idOf(1)]);
    expect([other.state().done, other.world.framesEstimated]).toEqual([[], 0]);
  });

  it('keeps the joints and gives the reason where the video is gone', async () => {
    const device = await deviceWith(1);
    await device.videos.remove(`${idOf(1)}.webm`);
    const { repository, background, state, rest } = await openPage(device);
    background.look();
    await rest();
    expect(state().problems[idOf(1)]).toMatch(/video is no longer on this device/);
    expect((await repository.recordings.find(idOf(1)))?.facts.fromVideo).toBe('impossible');
  });

  it('keeps the joints and gives the reason where the video can’t be read, and continues with the next', async () => {
    const { repository, parts } = await openPage(await deviceWith(1, 2));
    const { openFrameSource } = parts;
    const background = createBackgroundMeasuring({
      ...parts,
      openFrameSource: (file) =>
        file.name.startsWith('1')
          ? Promise.reject(new Problem('video', 'It is cut off. Copy it again.'))
          : openFrameSource(file),
    });
    background.look();
    await background.whenIdle();
    const { done, problems } = background.store.getState();
    expect(done).toEqual([idOf(2)]);
    expect(problems).toEqual({ [idOf(1)]: 'It is cut off. Copy it again.' });
    expect((await repository.recordings.find(idOf(1)))?.facts.fromVideo).toBe('impossible');
  });

  it('starts another tracker after one failed, and tries the recording again when asked', async () => {
    const device = await deviceWith(1, 2);
    const { repository, background, world, state, rest } = await openPage(device);
    world.beforeAnswer = (frame) =>
      world.trackersStarted === 1 && frame === 30
        ? Promise.reject(new Error('worker gone'))
        : Promise.resolve();
    background.look();
    await rest();
    expect(state().done).toEqual([idOf(2)]);
    expect(state().problems[idOf(1)]).toMatch(/worker gone/);
    expect((await repository.recordings.find(idOf(1)))?.facts.fromVideo).toBe('waiting');
    await background.retry(idOf(1));
    await rest();
    expect(state()).toMatchObject({ done: [idOf(2), idOf(1)], problems: {} });
  });

  it('does not bring back a recording that was deleted meanwhile', async () => {
    const device = await deviceWith(1);
    const { repository, background, world, state, rest } = await openPage(device);
    const { reached, open } = holdAt(40, world);
    background.look();
    await reached;
    await repository.recordings.remove(idOf(1));
    open();
    await rest();
    expect((await repository.recordings.list()).found).toEqual([]);
    expect(state()).toMatchObject({ done: [], problems: {} });
    expect(await (await device.openRecords()).list('rows')).toEqual([]);
  });

  /** Gives at most this many frames at a time, as when the browser takes the decoder away, and none after `endsAt`. */
  function stutteringSource(source: FrameSource, atOnce: number, endsAt = Infinity): FrameSource {
    return {
      ...source,
      async *frames(...asked) {
        let given = 0;
        for await (const frame of source.frames(...asked)) {
          if (given++ === atOnce || frame.timeMs >= endsAt) return;
          yield frame;
        }
      },
    };
  }

  it('continues with a video that stopped giving frames while it makes progress', async () => {
    const { repository, parts } = await openPage(await deviceWith(1));
    const { openFrameSource } = parts;
    const background = createBackgroundMeasuring({
      ...parts,
      openFrameSource: async (file) => stutteringSource(await openFrameSource(file), 70),
    });
    background.look();
    await background.whenIdle();
    expect(background.store.getState().done).toEqual([idOf(1)]);
    expect((await repository.recordings.find(idOf(1)))?.recording.observed.timesMs).toEqual(
      whole.observed.timesMs,
    );
  });

  it('keeps the joints tracked live where the video shows less of the set', async () => {
    const { repository, parts } = await openPage(await deviceWith(1));
    const { openFrameSource } = parts;
    const background = createBackgroundMeasuring({
      ...parts,
      openFrameSource: async (file) =>
        stutteringSource(await openFrameSource(file), 70, facts.durationMs - 2500),
    });
    background.look();
    await background.whenIdle();
    expect(background.store.getState().problems[idOf(1)]).toMatch(/ends too soon/);
    expect(await repository.recordings.find(idOf(1))).toMatchObject({
      recording: liveRecording(1),
      facts: { fromVideo: 'impossible' },
    });
  });
});

describe('createBackgroundMeasuring(parts) where no turn is to be had', () => {
  it('becomes idle, and asks again on the next look', async () => {
    let asked = 0;
    const refused: Marks = {
      hold: () => {
        asked++;
        return Promise.reject(new Error('refused'));
      },
      held: () => Promise.resolve(new Set()),
    };
    const { background, rest } = await openPage(await deviceWith(1), refused);
    background.look();
    await rest();
    expect(asked).toBe(1);
    background.look();
    await rest();
    expect(asked).toBe(2);
  });
});
