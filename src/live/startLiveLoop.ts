import type { PoseTracker } from '../pose/poseTracker';
import { createRateMeter } from './createRateMeter';
import type { LiveFrame } from './liveFrame';
import type { PictureFeed } from './pictureFeed';

/** Pictures a second over the last two seconds. */
export interface LiveRates {
  /** That the camera gave. */
  seenFps: number;
  /** In which joints were looked for. */
  trackedFps: number;
}

export interface LiveLoop {
  /** No picture is taken until resume; the one under way is still reported. */
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
}

/**
 * Hands the camera's pictures to the pose tracker, one at a time and always the newest: what comes while it works is
 * dropped, so that nothing lags behind however slow the device is.
 */
export function startLiveLoop({
  feed,
  tracker,
  onFrame,
  onPicture,
  now = () => performance.now(),
}: LoopParts): LiveLoop {
  const tracked = createRateMeter(now());
  const seen = createRateMeter(now());
  let seenBefore = feed.seen();
  let isRunning = true;
  let resumed: Promise<void> | null = null;
  let resume: () => void = () => undefined;

  const countSeen = () => {
    for (; seenBefore < feed.seen(); seenBefore++) seen.count(now());
  };
  const run = async () => {
    await tracker.reset();
    let lastMs = -Infinity;
    while (isRunning) {
      if (resumed !== null) await resumed;
      const next = await feed.next();
      if (next === null) break;
      if (!isRunning || resumed !== null || next.timeMs <= lastMs) {
        next.picture.close();
        continue;
      }
      const { timeMs, picture, scale, widthPx, heightPx } = next;
      lastMs = timeMs;
      onPicture?.(picture);
      const row = await tracker.estimate(picture, scale, timeMs);
      countSeen();
      tracked.count(now());
      if (isRunning) onFrame({ timeMs, row, widthPx, heightPx });
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
