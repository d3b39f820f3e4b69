import { describe, expect, it } from 'vitest';
import type { LiveFrame } from '#device/live/liveFrame';
import { startLiveLoop } from '#device/live/startLiveLoop';
import { createFakeCamera, someRow } from './fakeCamera';

/** A camera that gives a picture every 10 ms, and a tracker that takes 35 ms for one. */
function startSlowLoop() {
  const camera = createFakeCamera(10);
  camera.estimateMs.full = 35;
  const frames: LiveFrame[] = [];
  const { tracker, now, wait } = camera;
  const feed = camera.openFeed();
  const loop = startLiveLoop({ feed, tracker, now, wait, onFrame: (frame) => frames.push(frame) });
  return { camera, feed, frames, loop };
}

describe('startLiveLoop({ feed, tracker, onFrame })', () => {
  it('hands over one picture at a time, hardly older than the newest, and drops what came meanwhile', async () => {
    const { camera, frames } = startSlowLoop();
    await camera.pass(200);
    expect(camera.mostUnderWay()).toBe(1);
    // The first answer comes after 36 ms, and no sooner is it known how long the next picture can wait: that of 10 ms was
    // made ready at once. From then on one is begun while the tracker works, 20 ms before it is done, and drops three.
    expect(camera.asked.slice(0, 2)).toEqual([0, 10]);
    camera.asked.slice(2).forEach((timeMs, i) => {
      const handedOverMs = (i + 2) * 36;
      expect(handedOverMs - timeMs).toBeLessThan(30);
    });
    expect(camera.asked.length).toBeGreaterThan(4);
    expect(frames.map(({ timeMs }) => timeMs)).toEqual(camera.asked.slice(0, -1));
    expect(frames[0]).toEqual({ timeMs: 0, row: someRow, widthPx: 540, heightPx: 960 });
    expect(camera.openPictures.count).toBeLessThanOrEqual(2);
  });

  it('counts the pictures that came and those that were tracked', async () => {
    const { camera, loop } = startSlowLoop();
    await camera.pass(3000);
    const { seenFps, trackedFps } = loop.rates();
    expect(seenFps).toBeCloseTo(100, -0.5);
    expect(trackedFps).toBeGreaterThan(24);
    expect(trackedFps).toBeLessThan(29);
  });

  it('shows each picture before it is handed over', async () => {
    const camera = createFakeCamera(10);
    const shown: number[] = [];
    const { tracker, now, wait } = camera;
    const loop = startLiveLoop({
      feed: camera.openFeed(),
      tracker,
      now,
      wait,
      onFrame: () => undefined,
      onPicture: () => shown.push(camera.asked.length),
    });
    await camera.pass(35);
    expect(shown.slice(0, 3)).toEqual([0, 1, 2]);
    loop.stop();
  });

  it('reports that nobody is found', async () => {
    const { camera, frames } = startSlowLoop();
    camera.setRow(null);
    await camera.pass(50);
    expect(frames[0]!.row).toBeNull();
  });

  it('takes no picture while paused, and the newest afterwards', async () => {
    const { camera, loop } = startSlowLoop();
    await camera.pass(20);
    loop.pause();
    loop.pause();
    await camera.pass(500);
    expect(camera.asked).toEqual([0]);
    loop.resume();
    await camera.pass(100);
    expect(camera.asked[1]).toBe(530);
    expect(loop.rates().trackedFps).toBeLessThan(31);
    loop.stop();
    await camera.pass(50);
    await loop.ended;
  });

  it('stops at once, closes the feed and every picture, and reports nothing more', async () => {
    const { camera, frames, loop } = startSlowLoop();
    await camera.pass(45);
    const before = frames.length;
    loop.stop();
    await camera.pass(100);
    await loop.ended;
    expect(frames).toHaveLength(before);
    expect(camera.openFeeds()).toBe(0);
    expect(camera.openPictures.count).toBe(0);
  });

  it('stops while paused', async () => {
    const { camera, loop } = startSlowLoop();
    await camera.pass(50);
    loop.pause();
    loop.stop();
    await camera.pass(50);
    await loop.ended;
    expect(camera.openPictures.count).toBe(0);
  });

  it('ends with the camera', async () => {
    const { camera, feed, loop } = startSlowLoop();
    await camera.pass(20);
    feed.close();
    await camera.pass(100);
    await expect(loop.ended).resolves.toBeUndefined();
  });

  it('rejects where the tracker fails, and closes the feed', async () => {
    const { openFeed, openFeeds, tracker, now, wait } = createFakeCamera(10);
    const failing = { ...tracker, estimate: () => Promise.reject(new Error('The pose worker has stopped.')) };
    const loop = startLiveLoop({ feed: openFeed(), tracker: failing, now, wait, onFrame: () => undefined });
    await expect(loop.ended).rejects.toThrow('The pose worker has stopped.');
    expect(openFeeds()).toBe(0);
  });
});
