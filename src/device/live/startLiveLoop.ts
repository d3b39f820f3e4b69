import type { PoseTracker } from '../pose/poseTracker';
import { createRateMeter } from './createRateMeter';
import type { LiveFrame } from './liveFrame';
import type { LivePicture, PictureFeed } from './pictureFeed';

/** Pictures a second over the last two seconds. */
export interface LiveRates {
  /** Delivered by the camera. */
  seenFps: number;
  /** Searched for joints. */
  trackedFps: number;
}

export interface LiveLoop {
  /** No picture is passed on until resume; the one in progress is still reported. */
  pause(): void;
  resume(): void;
  rates(): LiveRates;
  /** Ends the loop and closes the feed; nothing more is reported. */
  stop(): void;
  /** Settles once the loop has ended: by stop, or because the camera has; rejects where the tracker failed. */
  readonly ended: Promise<void>;
}

interface LoopParts {
  feed: PictureFeed;
  /** With a model loaded. */
  tracker: Pick<PoseTracker, 'estimate' | 'reset'>;
  onFrame: (frame: LiveFrame) => void;
  /**
   * Receives each picture before the search for joints, for example to measure its brightness; must not keep
   * the picture.
   */
  onPicture?: ((picture: ImageBitmap) => void) | undefined;
  now?: () => number;
  wait?: (ms: number) => Promise<void>;
}

/** The next picture is started this multiple of its usual latency early: waiting for it costs more than its age. */
const headStart = 2;

/**
 * Passes the camera's pictures to the pose tracker, one at a time. What arrives while it works is dropped, so
 * nothing lags behind however slow the device is. The next one is prepared just before the tracker is done.
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
  /** The newest picture, started in time to be ready when the tracker is. */
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
    // A failure of the tracker that stop itself caused is not reported.
    ended: run()
      .catch((error: unknown) => {
        if (isRunning) throw error;
      })
      .finally(stop),
  };
}
