import { describe, expect, it } from 'vitest';
import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import { defaultLimits } from '#core/protocol/limits';
import { CameraProblem } from '#device/camera/cameraProblem';
import { RecordingProblem } from '#device/camera/recordingProblem';
import type { ChunkSink, RecordingEnd } from '#device/camera/recordVideo';
import type { LivePicture } from '#device/live/pictureFeed';
import { createMirror, type MirrorSight } from '#features/mirror/store/createMirror';
import type { RecorderAdapters } from '#features/mirror/store/mirrorRecorder';

const leg = { side: 'right', limits: defaultLimits } as const;
/** For tests that record nothing. */
const noRecorder = {
  recordVideo: () => expect.unreachable(),
  pickRecordingType: () => expect.unreachable(),
  saveBlob: () => expect.unreachable(),
  now: () => expect.unreachable(),
};
const settle = () => new Promise((resolve) => setTimeout(resolve, 5));

/** A right leg whose knee is this far to the picture's right of the line, px. */
function rowWith(kneeAsidePx: number): Float32Array {
  const row = new Float32Array(keypointCount * 3);
  const points: [KeypointName, number, number][] = [
    ['right_hip', 100, 100],
    ['right_knee', 100 + kneeAsidePx, 200],
    ['right_ankle', 100, 300],
  ];
  for (const [name, x, y] of points) row.set([x, y, 0.9], keypointNames.indexOf(name) * 3);
  return row;
}

/** A mirror whose camera shows knees one after the other. */
function openMirror(kneesPx: readonly number[], recorder: Partial<RecorderAdapters> = {}) {
  const world = { camerasClosed: 0, trackersClosed: 0, tones: 0, unlocked: 0 };
  let given = 0;
  const mirror = createMirror({
    openCamera: () =>
      Promise.resolve({
        stream: {} as MediaStream,
        facts: { deviceId: 'a', label: 'A', facing: null, widthPx: 400, heightPx: 600, frameRateHz: 30 },
        onEnded: () => () => undefined,
        onMuted: () => () => undefined,
        close: () => world.camerasClosed++,
      }),
    openFeed: () => ({
      next: () => {
        if (given >= kneesPx.length) return new Promise<LivePicture>(() => undefined);
        const picture = { close: () => undefined } as ImageBitmap;
        return Promise.resolve({ timeMs: ++given * 33, picture, scale: 1, widthPx: 400, heightPx: 600 });
      },
      seen: () => given,
      close: () => undefined,
    }),
    createTracker: () => ({
      load: () => Promise.resolve({ backend: 'wasm', threads: 1 }),
      reset: () => Promise.resolve(),
      estimate: (_picture, _scale, timeMs) => Promise.resolve(rowWith(kneesPx[Math.round(timeMs / 33) - 1]!)),
      close: () => world.trackersClosed++,
    }),
    tone: { unlock: () => world.unlocked++, play: () => world.tones++ },
    ...noRecorder,
    ...recorder,
  });
  const sights: MirrorSight[] = [];
  mirror.watch((sight) => sights.push(sight));
  return { mirror, world, sights };
}

describe('createMirror(adapters)', () => {
  it('reports for each picture whether the knee is in its lane, and plays a tone each time it leaves', async () => {
    // 5 px aside is 5.7 degrees, 20 px 22.6 degrees, 8.5 px 9.7 degrees: on the limit, not yet back.
    const { mirror, world, sights } = openMirror([5, 20, 8.5, 20, 0, 20]);
    mirror.setTone(true);
    await mirror.open(leg);
    await settle();
    expect(sights.map(({ isOutside }) => isOutside)).toEqual([false, true, false, true, false, true]);
    expect(sights[1]!.knee!.deg).toBeCloseTo(22.6, 1);
    expect(world).toMatchObject({ tones: 2, unlocked: 1 });
    expect(mirror.store.getState().camera).toMatchObject({ state: 'on', isMirrored: true });
  });

  it('makes no sound unless it is wanted, and lets camera and tracker go', async () => {
    const { mirror, world } = openMirror([20]);
    await mirror.open(leg);
    await settle();
    mirror.close();
    expect(world).toMatchObject({ tones: 0, camerasClosed: 1, trackersClosed: 1 });
    expect(mirror.store.getState().camera).toEqual({ state: 'off' });
    expect(mirror.stream()).toBeNull();
  });

  it('says what to do where there is no camera', async () => {
    const mirror = createMirror({
      openCamera: () => Promise.reject(new CameraProblem('none')),
      openFeed: () => expect.unreachable(),
      createTracker: () => expect.unreachable(),
      tone: { unlock: () => undefined, play: () => undefined },
      ...noRecorder,
    });
    await mirror.open(leg);
    expect(mirror.store.getState().camera).toMatchObject({ state: 'problem' });
  });
});

/** A recorder that is ended by hand, or by the test. */
function fakeRecorder(type = 'video/webm;codecs=vp8') {
  const world = {
    started: 0,
    sink: null as ChunkSink | null,
    end: (() => undefined) as (end: RecordingEnd) => void,
  };
  const saved: [string, Blob][] = [];
  let clockMs = Date.parse('2026-03-02T10:00:00Z');
  const adapters: RecorderAdapters = {
    recordVideo(_stream, sink) {
      world.started++;
      world.sink = sink;
      const ended = new Promise<RecordingEnd>((resolve) => (world.end = resolve));
      return {
        pause: () => undefined,
        resume: () => undefined,
        stop() {
          world.end({ bytes: 1, problem: null });
          return ended;
        },
        ended,
        isOver: () => false,
        videoTimeMs: () => null,
      };
    },
    pickRecordingType: () => type,
    saveBlob: (name, blob) => saved.push([name, blob]),
    now: () => new Date((clockMs += 2500)),
  };
  return { adapters, world, saved };
}

describe('recording in the mirror', () => {
  const recordingOf = (mirror: ReturnType<typeof createMirror>) => mirror.store.getState().recording;

  it('keeps nothing unless asked; what is recorded stays in memory until it is dropped', async () => {
    const { adapters, world, saved } = fakeRecorder();
    const { mirror } = openMirror([], adapters);
    mirror.record();
    expect(world.started).toBe(0); // Without a camera there is nothing to record.
    await mirror.open(leg);
    expect(recordingOf(mirror)).toEqual({ state: 'off' });

    mirror.record();
    mirror.record();
    expect(world.started).toBe(1);
    expect(recordingOf(mirror).state).toBe('running');
    mirror.dropRecording(); // Not while it runs.
    expect(recordingOf(mirror).state).toBe('running');
    await world.sink!.write(new Blob(['abc']));
    await world.sink!.write(new Blob(['def']));
    mirror.stopRecording();
    await settle();
    const taken = recordingOf(mirror);
    if (taken.state !== 'done') expect.unreachable();
    expect(await taken.file.text()).toBe('abcdef');
    expect(taken).toMatchObject({ lastedMs: 2500, problem: null });
    expect(taken.file).toMatchObject({ name: 'practice-2026-03-02-1000.webm', type: 'video/webm' });

    mirror.record(); // Not over one that nobody has decided on.
    expect(world.started).toBe(1);
    mirror.saveRecording();
    expect(saved).toEqual([[taken.file.name, taken.file]]);
    mirror.dropRecording();
    expect(recordingOf(mirror)).toEqual({ state: 'off' });
    mirror.saveRecording();
    expect(saved).toHaveLength(1);
  });

  it('keeps what was recorded until the mirror was closed, or the camera ended', async () => {
    const { adapters, world } = fakeRecorder('video/mp4');
    const { mirror } = openMirror([], adapters);
    await mirror.open(leg);
    mirror.record();
    await world.sink!.write(new Blob(['abc']));
    mirror.close();
    await settle();
    expect(recordingOf(mirror)).toMatchObject({
      state: 'done',
      file: { name: 'practice-2026-03-02-1000.mp4' },
    });

    mirror.dropRecording();
    await mirror.open(leg);
    mirror.record();
    await world.sink!.write(new Blob(['abc']));
    const problem = new RecordingProblem('camera-ended');
    world.end({ bytes: 3, problem });
    await settle();
    expect(recordingOf(mirror)).toMatchObject({ state: 'done', problem: problem.message });
  });

  it('stops before the memory is full, and says so', async () => {
    const { adapters, world } = fakeRecorder();
    const { mirror } = openMirror([], adapters);
    await mirror.open(leg);
    mirror.record();
    const part = new Blob([new Uint8Array(50_000_000)]);
    for (let i = 0; i < 5; i++) await world.sink!.write(part);
    await settle();
    expect(recordingOf(mirror).state).toBe('running');
    await world.sink!.write(part);
    await settle();
    expect(recordingOf(mirror)).toMatchObject({
      state: 'done',
      problem: expect.stringContaining('memory') as string,
    });
  });

  it('says what to do where the browser can’t record, and where nothing came', async () => {
    const { adapters, world } = fakeRecorder();
    const broken = openMirror([], {
      ...adapters,
      pickRecordingType: () => {
        throw new RecordingProblem('no-recorder');
      },
    });
    await broken.mirror.open(leg);
    broken.mirror.record();
    expect(recordingOf(broken.mirror)).toMatchObject({
      state: 'failed',
      sentence: expect.stringContaining('camera app') as string,
    });

    const { mirror } = openMirror([], adapters);
    await mirror.open(leg);
    mirror.record();
    world.end({ bytes: 0, problem: new RecordingProblem('recorder-failed') });
    await settle();
    expect(recordingOf(mirror).state).toBe('failed');
    mirror.record();
    mirror.stopRecording();
    await settle();
    expect(recordingOf(mirror)).toEqual({ state: 'off' });
  });
});
