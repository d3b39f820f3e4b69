import type { FrameSource } from '../frames/frameSource';
import { buildKeypointTrack, type KeypointRow, type KeypointTrack } from '../keypoints/keypointTrack';
import type { PoseTracker } from '../pose/poseTracker';

/** Height that pictures are brought to: about twice the network's 256 px over a person who fills most of it. */
export const workingHeightPx = 640;

/** Pictures handed to the tracker ahead of its answers: enough that decoding and the network never wait in turn. */
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

export interface TrackOptions {
  signal?: AbortSignal;
  onProgress?: (progress: TrackingProgress) => void;
  /** Stops after so many frames; for the benchmark. */
  maxFrames?: number;
}

/**
 * Tracks a person's joints through a whole video, frame by frame.
 *
 * @throws the signal's reason when cancelled; whatever the source or the tracker throws
 */
export async function trackVideo(
  source: FrameSource,
  tracker: PoseTracker,
  { signal, onProgress, maxFrames = Infinity }: TrackOptions = {},
): Promise<KeypointTrack> {
  await tracker.reset();
  const rows: { timeMs: number; row: KeypointRow | null }[] = [];
  const underWay: Promise<void>[] = [];
  const startMs = performance.now();
  let framesDone = 0;
  let framesWithPerson = 0;

  for await (const { timeMs, picture, scale } of source.frames(workingHeightPx)) {
    if (signal?.aborted || rows.length >= maxFrames) {
      picture.close();
      break;
    }
    const entry: { timeMs: number; row: KeypointRow | null } = { timeMs, row: null };
    rows.push(entry);
    const answer = tracker.estimate(picture, scale, timeMs).then((row) => {
      entry.row = row;
      framesDone++;
      if (row !== null) framesWithPerson++;
      const seconds = (performance.now() - startMs) / 1000;
      const framesPerSecond = framesDone / seconds;
      const framesExpected = Math.max(framesDone, source.facts.expectedFrames);
      const secondsLeft = (framesExpected - framesDone) / framesPerSecond;
      onProgress?.({ framesDone, framesExpected, framesPerSecond, secondsLeft, framesWithPerson });
    });
    answer.catch(() => undefined); // Awaited below; a rejection before then must not count as unhandled.
    underWay.push(answer);
    if (underWay.length >= picturesAhead) await underWay.shift();
  }
  signal?.throwIfAborted();
  await Promise.all(underWay);
  signal?.throwIfAborted();
  return buildKeypointTrack(source.facts.widthPx, source.facts.heightPx, rows);
}
