import { buildKeypointTrack, type KeypointTrack, type TimedRow } from '#core/keypoints/keypointTrack';
import { closerRatesHz } from '#core/looks/chooseFrames';
import type { CloserFrame } from '#core/looks/closerLook';
import type { FrameSource } from '../frames/frameSource';
import type { CarefulTracker, PoseTracker } from '../pose/poseTracker';
import { workingHeightPx } from '../pose/workingHeightPx';

/** Pictures passed to the tracker ahead of its answers: enough that decoding and the network never wait in turn. */
const picturesAhead = 2;

export interface TrackingProgress {
  framesDone: number;
  framesExpected: number;
  framesPerSecond: number;
  /** Estimated, from the rate so far. */
  secondsLeft: number;
  /** Frames so far in which a person was found. */
  framesWithPerson: number;
}

/** A closer look along the way, at the rate that a bent leg is looked at: where it will be bent is not known yet. */
export interface LookAlong {
  /** With its second network loaded. */
  tracker: CarefulTracker;
  /** Called with each frame that was looked at, in order. */
  onLook: (look: CloserFrame) => void;
}

export interface TrackOptions {
  /** Left out where a closer look, if any, follows by itself: it takes as long as the usual one does in all frames. */
  closer?: LookAlong | undefined;
  signal?: AbortSignal;
  onProgress?: (progress: TrackingProgress) => void;
  /** Stops after this many frames; for the benchmark. */
  maxFrames?: number;
  /** Rows of the same video from an earlier, interrupted run; tracking continues after the last of them. */
  earlier?: readonly TimedRow[];
  /** Called with every new row, in the order of the frames. */
  onRow?: (row: TimedRow) => void;
}

/**
 * Tracks a person's joints through a whole video, frame by frame.
 *
 * @returns all rows, the earlier ones included
 * @throws the signal's reason when cancelled; whatever the source or the tracker throws
 */
export async function trackVideo(
  source: FrameSource,
  tracker: PoseTracker,
  { closer, signal, onProgress, maxFrames = Infinity, earlier = [], onRow }: TrackOptions = {},
): Promise<KeypointTrack> {
  await tracker.reset();
  const rows = [...earlier];
  const underWay: Promise<void>[] = [];
  let inOrder: Promise<void> = Promise.resolve();
  const startMs = performance.now();
  let framesDone = earlier.length;
  const estimate = createEstimate(tracker, closer);
  let framesWithPerson = earlier.filter(({ row }) => row !== null).length;

  for await (const { timeMs, picture, scale } of source.frames(workingHeightPx, earlier.at(-1)?.timeMs)) {
    if (signal?.aborted || rows.length >= maxFrames) {
      picture.close();
      break;
    }
    const entry: TimedRow = { timeMs, row: null };
    rows.push(entry);
    const answer = estimate(picture, scale, timeMs, rows.length - 1).then((row) => {
      entry.row = row;
      framesDone++;
      if (row !== null) framesWithPerson++;
      const seconds = (performance.now() - startMs) / 1000;
      const framesPerSecond = (framesDone - earlier.length) / seconds;
      const framesExpected = Math.max(framesDone, source.facts.expectedFrames);
      const secondsLeft = (framesExpected - framesDone) / framesPerSecond;
      onProgress?.({ framesDone, framesExpected, framesPerSecond, secondsLeft, framesWithPerson });
    });
    inOrder = Promise.all([inOrder, answer]).then(() => onRow?.(entry));
    inOrder.catch(() => undefined); // Awaited below; a rejection before then must not count as unhandled.
    underWay.push(inOrder);
    if (underWay.length >= picturesAhead) await underWay.shift();
  }
  signal?.throwIfAborted();
  await Promise.all(underWay);
  signal?.throwIfAborted();
  return buildKeypointTrack(source.facts.widthPx, source.facts.heightPx, rows);
}

type Estimate = (
  ...of: [...Parameters<PoseTracker['estimate']>, frame: number]
) => ReturnType<PoseTracker['estimate']>;

/** Looks at each picture, and at some of them more closely where that is wanted. */
function createEstimate(usual: PoseTracker, closer: LookAlong | undefined): Estimate {
  if (closer === undefined) return (picture, scale, timeMs) => usual.estimate(picture, scale, timeMs);
  const { tracker, onLook } = closer;
  let lookedMs = -Infinity;
  return async (picture, scale, timeMs, frame) => {
    // Half a millisecond, since times of frames are rounded.
    if (timeMs - lookedMs < 1000 / closerRatesHz.bent - 0.5) return tracker.estimate(picture, scale, timeMs);
    lookedMs = timeMs;
    const { row, closer: look } = await tracker.estimateCloser(picture, scale, timeMs);
    if (look !== null) onLook({ frame, ...look });
    return row;
  };
}
