import { frameRow, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { hasPerson } from '#core/keypoints/observedPoint';
import { chooseFrames, loadedStretches, type LoadedMoments } from '#core/looks/chooseFrames';
import type { CloserFrame } from '#core/looks/closerLook';
import type { FrameSource } from '../frames/frameSource';
import type { CarefulTracker } from '../pose/poseTracker';
import { workingHeightPx } from '../pose/workingHeightPx';

/** A person moves too far in this time to be followed from one picture to the next, ms. */
const longestStepMs = 400;

export interface CloserProgress {
  framesDone: number;
  framesExpected: number;
}

export interface LookCloserOptions {
  signal?: AbortSignal;
  onProgress?: (progress: CloserProgress) => void;
  /** Called with every frame that was looked at, in order. */
  onFrame?: (frame: CloserFrame) => void;
}

/**
 * Looks again, with two networks and at the mirror image, at the frames that numbers rest on most.
 *
 * @param track  of the same video, from the usual look
 * @param measurement  of that track
 * @returns  in the order of the frames; those in which nobody was found are left out
 * @throws the signal's reason when cancelled; whatever the source or the tracker throws
 */
export async function lookCloser(
  source: FrameSource,
  tracker: CarefulTracker,
  track: KeypointTrack,
  measurement: LoadedMoments,
  { signal, onProgress, onFrame }: LookCloserOptions = {},
): Promise<CloserFrame[]> {
  await tracker.loadSecond();
  signal?.throwIfAborted();
  const frames = chooseFrames(track.timesMs, loadedStretches(measurement)).filter((frame) =>
    hasPerson(track, frame),
  );
  const placeOf = new Map(frames.map((frame) => [msKey(track.timesMs[frame]!), frame]));
  const looks: CloserFrame[] = [];
  let lastMs = -Infinity;
  let framesDone = 0;
  const pictures = source.frames(workingHeightPx, undefined, (timeMs) => placeOf.has(msKey(timeMs)));
  for await (const { timeMs, picture, scale } of pictures) {
    const frame = placeOf.get(msKey(timeMs))!;
    const isAlone = timeMs - lastMs > longestStepMs;
    lastMs = timeMs;
    const look = await tracker.lookCloser(picture, scale, timeMs, frameRow(track, frame), isAlone);
    signal?.throwIfAborted();
    framesDone++;
    if (look !== null) {
      looks.push({ frame, ...look });
      onFrame?.(looks.at(-1)!);
    }
    onProgress?.({ framesDone, framesExpected: frames.length });
  }
  signal?.throwIfAborted();
  return looks;
}

/** Recording documents keep times to a thousandth of a millisecond. */
function msKey(timeMs: number): number {
  return Math.round(timeMs * 1000);
}
