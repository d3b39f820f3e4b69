import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { CameraProblem } from '#device/camera/cameraProblem';
import { checkDevice } from '#device/live/checkDevice';
import type { PictureFeed } from '#device/live/pictureFeed';
import { createFakeCamera } from './fakeCamera';

/** Checks a device on which one picture takes so long with either model, ms. */
async function check(
  fullMs: number,
  liteMs: number,
  setUp?: (camera: ReturnType<typeof createFakeCamera>) => void,
) {
  const camera = createFakeCamera(33);
  Object.assign(camera.estimateMs, { full: fullMs, lite: liteMs });
  setUp?.(camera);
  const { tracker, now, wait } = camera;
  const feeds: PictureFeed[] = [];
  const openFeed = () => {
    feeds.push(camera.openFeed());
    return feeds.at(-1)!;
  };
  const checking = checkDevice({ openFeed, tracker, now, wait });
  checking.catch(() => undefined);
  return { camera, checking, feeds };
}

describe('checkDevice({ openFeed, tracker })', () => {
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('measures a fast device for two seconds with the full model', async () => {
    const { camera, checking } = await check(50, 20);
    await camera.pass(2400);
    const result = await checking;
    expect(result.decision).toEqual({ model: 'full', hasFeedback: true, sentence: null });
    // A picture comes every 33 ms and one takes 50: they are tracked every 50 to 66 ms.
    expect(result.fullFps).toBeGreaterThan(15);
    expect(result.fullFps).toBeLessThan(20.5);
    expect(result).toMatchObject({ liteFps: null, hasPerson: true });
    expect(result.cameraFps).toBeGreaterThan(28);
    expect(camera.openFeeds()).toBe(0);
  });

  it('continues to the lite model, which stays loaded', async () => {
    const { camera, checking } = await check(140, 60);
    await camera.pass(5500);
    const { decision, fullFps, liteFps } = await checking;
    expect(decision).toMatchObject({ model: 'lite', hasFeedback: true });
    expect(fullFps).toBeLessThan(7.5);
    expect(liteFps).toBeGreaterThan(12);
    expect(camera.model()).toBe('lite');
  });

  it('leaves live feedback off on a device that is too slow with either', async () => {
    const { camera, checking } = await check(500, 210);
    await camera.pass(8000);
    expect((await checking).decision).toMatchObject({ model: 'lite', hasFeedback: false });
  });

  it('says where nobody was in the picture', async () => {
    const { camera, checking } = await check(30, 20, (fake) => fake.setRow(null));
    await camera.pass(2400);
    expect((await checking).hasPerson).toBe(false);
  });

  it('ends where one picture takes longer than all the time there is', async () => {
    const { camera, checking } = await check(1000, 900);
    await camera.pass(3300);
    await vi.advanceTimersByTimeAsync(4000);
    await camera.pass(1000);
    await camera.pass(3000);
    await vi.advanceTimersByTimeAsync(4000);
    expect((await checking).decision.hasFeedback).toBe(false);
  });

  it('treats a device as too slow that does not warm up while pictures arrive', async () => {
    const { camera, checking } = await check(20_000, 20_000);
    await camera.pass(1000);
    await vi.advanceTimersByTimeAsync(15_000);
    await camera.pass(20_000);
    await vi.advanceTimersByTimeAsync(15_000);
    expect(await checking).toMatchObject({ fullFps: 0, liteFps: 0, decision: { hasFeedback: false } });
  });

  it('throws where the camera gives no picture, or ends', async () => {
    const { checking } = await check(50, 20, (fake) => fake.stall());
    await vi.advanceTimersByTimeAsync(15_000);
    await expect(checking).rejects.toMatchObject({ kind: 'in-use' });
    const ended = await check(50, 20);
    await ended.camera.pass(300);
    ended.feeds[0]!.close();
    await ended.camera.pass(100);
    await expect(ended.checking).rejects.toBeInstanceOf(CameraProblem);
    await expect(ended.checking).rejects.toMatchObject({ kind: 'unplugged' });
  });
});
