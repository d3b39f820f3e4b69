import type { Correction } from '#core/correction/correction';
import { measureCorrected } from '#core/correction/measureCorrected';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { closerExtent, type CloserExtent, type CloserFrame } from '#core/looks/closerLook';
import { combineLooks } from '#core/looks/combineLooks';
import type { TimedSetup } from '#core/measurement/measureSet';
import type { FrameSource } from '#device/frames/frameSource';
import type { CarefulTracker } from '#device/pose/poseTracker';
import { lookCloser, type LookCloserOptions } from '#device/tracking/lookCloser';

/** Joints as all looks together see them, and which frames were looked at more closely; null where none was. */
export interface CloserSeen {
  track: KeypointTrack;
  closer: CloserExtent | null;
}

/** Joints as all looks so far see them. */
export function seenSoFar(usual: KeypointTrack, looks: readonly CloserFrame[]): CloserSeen {
  return { track: combineLooks(usual, looks), closer: closerExtent(looks, usual.timesMs) };
}

/**
 * Looks at a recording more closely. Where that fails, as without a connection on first use, the usual look
 * stands: it is a measurement too.
 *
 * @param usual  the joints that the usual look saw in the same video
 * @throws the signal's reason when cancelled
 */
export async function seeCloser(
  source: FrameSource,
  tracker: CarefulTracker,
  usual: KeypointTrack,
  { setup, corrections = [] }: { setup: TimedSetup; corrections?: readonly Correction[] | undefined },
  options: LookCloserOptions,
): Promise<CloserSeen> {
  try {
    const { measurement } = measureCorrected(usual, setup, corrections);
    return seenSoFar(usual, await lookCloser(source, tracker, usual, measurement, options));
  } catch {
    options.signal?.throwIfAborted();
    return { track: usual, closer: null };
  }
}
