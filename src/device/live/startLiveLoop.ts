import type { PoseTracker } from '../pose/poseTracker';
import { createRateMeter } from './createRateMeter';
import type { LiveFrame } from './liveFrame';
import type { LivePicture, PictureFeed } from './pictureFeed';

/** Pictures a second over the last two seconds. */
export interface LiveRates {
  /** That the camera gave. */
  seenFps: number;
  /** In which joints were looked for. */
  trackedFps: number;
}

export interface LiveLoop {
  /** No picture is handed over until resume; the one under way is still reported. */
  pause(): void;
  resume(): void;
  rates(): LiveRates;
  /** Ends the loop and closes the feed; nothing is reported any more. */
  stop(): void;
  /** Settles once the loop has ended: by stop, or because the camera has; rejects where the tracker failed. */
  readonly ended: Promise<void>;
}

interface LoopParts {
  feed: PictureFeed;
  /** With a model loaded. */
  tracker: Pick<PoseTracker, 'estimate' | 'reset'>;
  onFrame: (frame: LiveFrame) => void;
  /** Sees each picture before its joints are looked for, to tell its light for example; it must not keep the picture. */
  onPicture?: ((picture: ImageBitmap) => void) | undefined;
  now?: () => number;
  wait?: (ms: number) => Promise<void>;
}

/** The next picture is begun so many times earlier than it usually takes: waiting for it costs more than its age. */
const headStart = 2;

/**
 * Hands the camera's pictures to the pose tracker, one at a time: what comes while it works is dropped, so that nothing
 * lags behind however slow the device is. The next one is made ready just before the tracker is done.
 */
export function startLiveLoop({
  feed,
  tracker,
  onFrame,
  onPicture,
  now = () => performance.now(),
  wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
}: LoopParts): LiveLoop {
  const tracked = createRateMeter(now());
  const seen = createRateMeter(now());
  let seenBefore = feed.seen();
  let isRunning = true;
  let resumed: Promise<void> | null = null;
  let resume: () => void = () => undefined;
  let readyingMs = 0;
  let estimateMs = 0;
  let lastMs = -Infinity;

  const countSeen = () => {
    for (; seenBefore < feed.seen(); seenBefore++) seen.count(now());
  };
  const makeReady = (): Promise<LivePicture | null> => {
    const picture = nextPicture();
    picture.catch(() => undefined); // Awaited once the tracker is done; before then it must not count as unhandled.
    return picture;
  };
  /** The newest picture, begun in time to be ready when the tracker is. */
  const nextPicture = async (): Promise<LivePicture | null> => {
    const spareMs = estimateMs - headStart * readyingMs;
    if (spareMs > 0) await wait(spareMs);
    const fromMs = now();
    const picture = await feed.next();
    readyingMs = now() - fromMs;
    return picture;
  };
  const track = async ({ timeMs, picture, scale, widthPx, heightPx }: LivePicture) => {
    lastMs = timeMs;
    onPicture?.(picture);
    const fromMs = now();
    const row = await tracker.estimate(picture, scale, timeMs);
    estimateMs = now() - fromMs;
    countSeen();
    tracked.count(now());
    if (isRunning) onFrame({ timeMs, row, widthPx, heightPx });
  };
  const run = async () => {
    await tracker.reset();
    let ready = makeReady();
    try {
      while (isRunning) {
        if (resumed !== null) await resumed;
        const next = await ready;
        if (next === null) return;
        const isWanted = isRunning && resumed === null && next.timeMs > lastMs;
        const tracking = isWanted ? track(next) : next.picture.close();
        ready = makeReady();
        await tracking;
      }
    } finally {
      ready.then((left) => left?.picture.close()).catch(() => undefined);
    }
  };
  const stop = () => {
    isRunning = false;
    resume();
    feed.close();
  };
  return {
    pause() {
      resumed ??= new Promise((resolve) => (resume = resolve));
    },
    resume() {
      if (resumed === null) return;
      resumed = null;
      // A picture from before the pause is out of date.
      lastMs = Math.max(lastMs, now());
      tracked.restart(now());
      seen.restart(now());
      resume();
    },
    rates() {
      countSeen();
      return { seenFps: seen.perSecond(now()), trackedFps: tracked.perSecond(now()) };
    },
    stop,
    // After a tracker's failure that stop itself brought about, nobody wants to hear of it.
    ended: run()
      .catch((error: unknown) => {
        if (isRunning) throw error;
      })
      .finally(stop),
  };
}
