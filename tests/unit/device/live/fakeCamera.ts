import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import type { PoseModel } from '#core/keypoints/poseModel';
import type { LivePicture, PictureFeed } from '#device/live/pictureFeed';

/** A row of points that all lie at one place. */
export const someRow: KeypointRow = new Float32Array(3 * keypointCount).fill(0.8);

/** A camera, a pose tracker and a clock that only advances on request. */
export function createFakeCamera(intervalMs: number) {
  let nowMs = 0;
  let openFeeds = 0;
  const wakers: (() => void)[] = [];
  const openPictures = { count: 0 };
  let stalled = false;
  const newest = () => (stalled ? -1 : Math.floor(nowMs / intervalMs));

  const openFeed = (): PictureFeed => {
    let isOpen = true;
    let given = -1;
    openFeeds++;
    return {
      async next() {
        while (isOpen && newest() <= given) await new Promise<void>((resolve) => wakers.push(resolve));
        if (!isOpen) return null;
        given = newest();
        openPictures.count++;
        const picture = { close: () => openPictures.count-- } as unknown as ImageBitmap;
        const live: LivePicture = {
          timeMs: given * intervalMs,
          picture,
          scale: 1.5,
          widthPx: 540,
          heightPx: 960,
        };
        return live;
      },
      seen: () => newest() + 1,
      close() {
        if (!isOpen) return;
        isOpen = false;
        openFeeds--;
        wake();
      },
    };
  };
  const wake = () => wakers.splice(0).forEach((each) => each());

  const timers: { atMs: number; run: () => void }[] = [];
  const estimateMs: Record<PoseModel, number> = { lite: 1, full: 1, heavy: 1 };
  let model: PoseModel = 'full';
  const asked: number[] = [];
  let underWay = 0;
  let mostUnderWay = 0;
  let row: KeypointRow | null = someRow;
  const tracker = {
    load(next: PoseModel) {
      model = next;
      return Promise.resolve({ backend: 'wasm' as const, threads: 1 });
    },
    reset: () => Promise.resolve(),
    estimate(picture: ImageBitmap, _scale: number, timeMs: number) {
      asked.push(timeMs);
      mostUnderWay = Math.max(mostUnderWay, ++underWay);
      return new Promise<KeypointRow | null>((resolve) => {
        timers.push({
          atMs: nowMs + estimateMs[model],
          run: () => {
            underWay--;
            picture.close();
            resolve(row);
          },
        });
      });
    },
  };

  return {
    openFeed,
    tracker,
    estimateMs,
    asked,
    openPictures,
    mostUnderWay: () => mostUnderWay,
    openFeeds: () => openFeeds,
    model: () => model,
    setRow: (next: KeypointRow | null) => (row = next),
    /** Gives no picture any more. */
    stall: () => void (stalled = true),
    now: () => nowMs,
    wait: (ms: number) =>
      new Promise<void>((resolve) => timers.push({ atMs: nowMs + ms, run: () => resolve() })),
    /** Lets time pass in steps of a millisecond. */
    async pass(ms: number) {
      for (let i = 0; i < ms; i++) {
        nowMs++;
        wake();
        timers.filter(({ atMs }) => atMs <= nowMs).forEach(({ run }) => run());
        timers.splice(0, timers.length, ...timers.filter(({ atMs }) => atMs > nowMs));
        for (let turn = 0; turn < 12; turn++) await Promise.resolve();
      }
    },
  };
}
