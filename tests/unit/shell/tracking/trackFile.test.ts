import { describe, expect, it, vi } from 'vitest';
import type { PoseDevice } from '#core/keypoints/poseModel';
import type { TrackingProgress } from '#device/tracking/trackVideo';
import { trackFile } from '#shell/tracking/trackFile';
import { fakeAdapters, fakeSource, fakeTracker, film, setup } from '../../../support/fakeAdapters';

const video = new File(['x'], 'stairs.mp4', { type: 'video/mp4' });

function tools(backend: PoseDevice['backend'] = 'wasm') {
  const { world } = fakeAdapters();
  const tracker = fakeTracker(film.track, world);
  const device = { backend, threads: 2 };
  return {
    world,
    tools: {
      openFrameSource: () => {
        world.sourcesOpen++;
        return Promise.resolve(fakeSource(film.track, world));
      },
      keeper: {
        ready: () => Promise.resolve({ tracker, device }),
        discard: () => void world.trackersClosed++,
      },
      weights: 'made-up 1.2.3',
    },
  };
}

describe('trackFile(video, setup, tools, options)', () => {
  it('returns the measured recording and reports every frame', async () => {
    const { tools: given, world } = tools();
    const progress: TrackingProgress[] = [];
    const onPicture = vi.fn();
    const { signal } = new AbortController();
    const onProgress = (now: TrackingProgress) => void progress.push(now);
    const recording = await trackFile(video, setup, given, { size: 'lite', signal, onProgress, onPicture });
    expect(recording).toMatchObject({
      origin: 'video',
      note: '',
      setup,
      model: { size: 'lite', weights: 'made-up 1.2.3', backend: 'wasm' },
    });
    expect(recording.measurement.repetitions).toHaveLength(3);
    expect(progress.at(-1)?.framesDone).toBe(film.track.timesMs.length);
    expect(onPicture).toHaveBeenCalledTimes(film.track.timesMs.length);
    expect(world.sourcesOpen).toBe(0);
  });

  it('goes on with another tracker where one fails on the way, and ends where that leads no further', async () => {
    const { tools: given, world } = tools();
    const { signal } = new AbortController();
    const options = { size: 'lite' as const, signal, onProgress: () => undefined };
    const whole = await trackFile(video, setup, given, options);
    let failures = 0;
    world.framesEstimated = 0;
    world.beforeAnswer = (frame) =>
      frame === 40 && failures++ === 0
        ? Promise.reject(new Error('the graphics processor was taken away'))
        : Promise.resolve();
    const recording = await trackFile(video, setup, given, options);
    expect(failures).toBe(2);
    expect(world.trackersClosed).toBe(1);
    expect(recording.observed.timesMs).toEqual(whole.observed.timesMs);
    expect(recording.observed.xPx).toEqual(whole.observed.xPx);
    expect(world.framesEstimated).toBeLessThan(film.track.timesMs.length + 10);

    world.beforeAnswer = () => Promise.reject(new Error('never again'));
    await expect(trackFile(video, setup, given, options)).rejects.toThrow('never again');
    expect(world.sourcesOpen).toBe(0);
  });

  it('tries another tracker once where one fails at the first picture', async () => {
    const { tools: given, world } = tools();
    const options = {
      size: 'lite' as const,
      signal: new AbortController().signal,
      onProgress: () => undefined,
    };
    const whole = await trackFile(video, setup, given, options);
    let isFirst = true;
    world.beforeAnswer = () => {
      const fails = isFirst;
      isFirst = false;
      return fails ? Promise.reject(new Error('the graphics processor was taken away')) : Promise.resolve();
    };
    const { observed } = await trackFile(video, setup, given, options);
    expect(world.trackersClosed).toBe(1);
    expect(observed.timesMs).toEqual(whole.observed.timesMs);
  });

  it('takes the closer look on the way where a graphics processor does it', async () => {
    const { tools: given, world } = tools('webgpu');
    world.secondAsidePx = 4;
    const { signal } = new AbortController();
    const options = { size: 'lite' as const, signal, onProgress: () => undefined };
    const { observed, measurement } = await trackFile(video, setup, given, options);
    // 25 frames a second, and 7.5 looks: each fourth frame.
    const looks = Math.ceil(film.track.timesMs.length / 4);
    expect(world.framesSeenCloser).toBe(looks);
    expect(observed.closer).toMatchObject({ frames: looks });
    expect(observed.xPx).not.toEqual(film.track.xPx);
    expect(measurement.repetitions).toHaveLength(3);
  });

  it('keeps the looks taken before a graphics processor was lost, each once', async () => {
    const { tools: given, world } = tools('webgl');
    const { signal } = new AbortController();
    const options = { size: 'lite' as const, signal, onProgress: () => undefined };
    const whole = await trackFile(video, setup, given, options);
    let failures = 0;
    world.beforeAnswer = (frame) =>
      frame === 42 && failures++ === 0 ? Promise.reject(new Error('taken away')) : Promise.resolve();
    const { observed } = await trackFile(video, setup, given, options);
    expect(failures).toBe(2);
    expect(observed.xPx).toEqual(whole.observed.xPx);
    expect(Math.abs(observed.closer!.frames - whole.observed.closer!.frames)).toBeLessThanOrEqual(1);
  });

  it('stands by the usual look where the second network can not be loaded', async () => {
    const { tools: given, world } = tools('webgpu');
    world.beforeSecond = () => Promise.reject(new Error('no connection'));
    const { signal } = new AbortController();
    const options = { size: 'lite' as const, signal, onProgress: () => undefined };
    const { observed } = await trackFile(video, setup, given, options);
    expect(observed.closer).toBeUndefined();
    expect(observed.xPx).toEqual(film.track.xPx);
  });

  it('ends with the reason of the signal, and closes the video', async () => {
    const { tools: given, world } = tools();
    const job = new AbortController();
    const onProgress = () => job.abort(new Error('enough'));
    const tracked = trackFile(video, setup, given, { size: 'lite', signal: job.signal, onProgress });
    await expect(tracked).rejects.toThrow('enough');
    expect(world.sourcesOpen).toBe(0);
  });
});
