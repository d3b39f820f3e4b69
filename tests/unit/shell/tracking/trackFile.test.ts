import { describe, expect, it, vi } from 'vitest';
import type { TrackingProgress } from '#device/tracking/trackVideo';
import { trackFile } from '#shell/tracking/trackFile';
import { fakeAdapters, fakeSource, fakeTracker, film, setup } from '../../../support/fakeAdapters';

const video = new File(['x'], 'stairs.mp4', { type: 'video/mp4' });

function tools() {
  const { world } = fakeAdapters();
  const tracker = fakeTracker(film.track, world);
  const device = { backend: 'wasm', threads: 2 } as const;
  return {
    world,
    tools: {
      openFrameSource: () => {
        world.sourcesOpen++;
        return Promise.resolve(fakeSource(film.track, world));
      },
      keeper: { ready: () => Promise.resolve({ tracker, device }) },
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

  it('ends with the reason of the signal, and closes the video', async () => {
    const { tools: given, world } = tools();
    const job = new AbortController();
    const onProgress = () => job.abort(new Error('enough'));
    const tracked = trackFile(video, setup, given, { size: 'lite', signal: job.signal, onProgress });
    await expect(tracked).rejects.toThrow('enough');
    expect(world.sourcesOpen).toBe(0);
  });
});
