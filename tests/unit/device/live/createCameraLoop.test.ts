import { describe, expect, it } from 'vitest';
import type { Camera } from '#device/camera/camera';
import { CameraProblem } from '#device/camera/cameraProblem';
import { createCameraLoop, type CameraLoopParts } from '#device/live/createCameraLoop';
import type { LiveFrame } from '#device/live/liveFrame';
import type { LivePicture } from '#device/live/pictureFeed';

const settle = () => new Promise((resolve) => setTimeout(resolve, 5));

/** A loop over cameras that give one picture every time they are asked for a feed. */
function fakeLoop(change: Partial<CameraLoopParts> = {}) {
  const world = {
    open: [] as string[],
    trackers: 0,
    closedTrackers: 0,
    /** Fails the next pictures. */
    faults: [] as Error[],
    frames: [] as LiveFrame[],
    failures: [] as unknown[],
    unplug: () => undefined as void,
  };
  const camera = (name: string) => (): Promise<Camera> => {
    world.open.push(name);
    return Promise.resolve({
      stream: { id: name } as MediaStream,
      facts: { deviceId: name, label: name, facing: null, widthPx: 400, heightPx: 600, frameRateHz: 30 },
      onEnded(listener) {
        world.unplug = () => listener(new CameraProblem('unplugged'));
        return () => undefined;
      },
      onMuted: () => () => undefined,
      close: () => world.open.splice(world.open.indexOf(name), 1),
    });
  };
  let timeMs = performance.now();
  const loop = createCameraLoop({
    openFeed() {
      let given = 0;
      return {
        next() {
          if (given++ > 0) return new Promise<LivePicture>(() => undefined);
          const picture = { close: () => undefined } as ImageBitmap;
          return Promise.resolve({ timeMs: ++timeMs, picture, scale: 1, widthPx: 400, heightPx: 600 });
        },
        seen: () => given,
        close: () => undefined,
      };
    },
    createTracker() {
      world.trackers++;
      return {
        load: () => Promise.resolve({ backend: 'wasm', threads: 1 }),
        reset: () => Promise.resolve(),
        estimate() {
          const fault = world.faults.shift();
          return fault === undefined ? Promise.resolve(null) : Promise.reject(fault);
        },
        close: () => world.closedTrackers++,
      };
    },
    onFrame: (frame) => world.frames.push(frame),
    onFailed: (error) => world.failures.push(error),
    ...change,
  });
  const prepare = async () => void (await loop.tracker().load('lite'));
  return { loop, world, camera, prepare };
}

describe('createCameraLoop(parts)', () => {
  it('follows the joints once the tracker is ready, and keeps the tracker from camera to camera', async () => {
    const { loop, world, camera, prepare } = fakeLoop();
    expect(await loop.open(camera('a'), prepare)).toBe(true);
    await settle();
    expect(world.frames).toHaveLength(1);
    expect(loop.stream()).toEqual({ id: 'a' });
    expect(await loop.open(camera('b'), prepare)).toBe(true);
    await settle();
    expect(world).toMatchObject({ open: ['b'], trackers: 1, closedTrackers: 0 });
    expect(world.frames).toHaveLength(2);
    loop.close();
    expect(world).toMatchObject({ open: [], closedTrackers: 1, failures: [] });
    expect(loop.stream()).toBeNull();
  });

  it('lets a camera go that was opened too late', async () => {
    const { loop, world, camera, prepare } = fakeLoop();
    const late = loop.open(camera('a'), prepare);
    loop.close();
    expect(await late).toBe(false);
    expect(world).toMatchObject({ open: [], trackers: 0, failures: [] });
    expect(loop.stream()).toBeNull();
  });

  it('does not follow a camera that was let go while the tracker was made ready', async () => {
    const { loop, world, camera, prepare } = fakeLoop();
    const seen: boolean[] = [];
    const overtaken = await loop.open(camera('a'), async (_, isCurrent) => {
      await prepare();
      loop.close();
      seen.push(isCurrent());
    });
    await settle();
    expect(overtaken).toBe(false);
    expect(seen).toEqual([false]);
    expect(world).toMatchObject({ open: [], frames: [], failures: [] });
  });

  it('releases everything of a camera before it reports its failure', async () => {
    const told: string[] = [];
    const { loop, world, camera, prepare } = fakeLoop({
      onLetGo: () => told.push(`let go of ${world.open.join()}`),
      onFailed: (error) => told.push(`${(error as CameraProblem).kind}, ${world.open.length} open`),
    });
    await loop.open(camera('a'), prepare);
    told.length = 0;
    world.unplug();
    expect(told).toEqual(['let go of a', 'unplugged, 0 open']);
  });

  it('gives up on a tracker that fails, unless it can be revived', async () => {
    const broken = new Error('the graphics card is gone');
    const given = fakeLoop();
    given.world.faults.push(broken);
    await given.loop.open(given.camera('a'), given.prepare);
    await settle();
    expect(given.world).toMatchObject({ failures: [broken], open: [], frames: [] });

    const revived = fakeLoop({
      async revive() {
        revived.loop.freeTracker();
        await revived.prepare();
      },
    });
    revived.world.faults.push(broken);
    await revived.loop.open(revived.camera('a'), revived.prepare);
    await settle();
    expect(revived.world).toMatchObject({ failures: [], open: ['a'], trackers: 2, closedTrackers: 1 });
    expect(revived.world.frames).toHaveLength(1);
  });

  it('stays paused from camera to camera, until it is resumed or closed', async () => {
    const { loop, world, camera, prepare } = fakeLoop();
    loop.pause();
    await loop.open(camera('a'), prepare);
    await settle();
    expect(world.frames).toEqual([]);
    loop.close();
    await loop.open(camera('b'), prepare);
    await settle();
    expect(world.frames).toHaveLength(1);
  });
});
