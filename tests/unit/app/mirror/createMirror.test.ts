import { describe, expect, it } from 'vitest';
import { createMirror, type MirrorSight } from '../../../../src/app/mirror/createMirror';
import { CameraProblem } from '../../../../src/camera/cameraProblem';
import { keypointCount, keypointNames, type KeypointName } from '../../../../src/keypoints/keypointNames';
import type { LivePicture } from '../../../../src/live/pictureFeed';
import { defaultLimits } from '../../../../src/protocol/limits';

const leg = { side: 'right', limits: defaultLimits } as const;
const settle = () => new Promise((resolve) => setTimeout(resolve, 5));

/** A right leg whose knee stands so far to the picture's right of the line, px. */
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
function openMirror(kneesPx: readonly number[]) {
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
  });
  const sights: MirrorSight[] = [];
  mirror.watch((sight) => sights.push(sight));
  return { mirror, world, sights };
}

describe('createMirror(adapters)', () => {
  it('tells of each picture whether the knee is in its lane, and rings once a time that it leaves', async () => {
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
    });
    await mirror.open(leg);
    expect(mirror.store.getState().camera).toMatchObject({ state: 'problem' });
  });
});
