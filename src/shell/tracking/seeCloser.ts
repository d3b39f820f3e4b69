import type { Correction } from '#core/correction/correction';
import { measureCorrected } from '#core/correction/measureCorrected';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { combineLooks } from '#core/looks/combineLooks';
import type { TimedSetup } from '#core/measurement/measureSet';
import type { FrameSource } from '#device/frames/frameSource';
import type { CarefulTracker } from '#device/pose/poseTracker';
import { lookCloser, type LookCloserOptions } from '#device/tracking/lookCloser';

/**
 * Looks at a recording more closely. Where that fails, as without a connection on first use, the usual look
 * stands: it is a measurement too.
 *
 * @param usual  the joints that the usual look saw in the same video
 * @returns  the joints as all looks together see them
 * @throws the signal's reason when cancelled
 */
export async function seeCloser(
  source: FrameSource,
  tracker: CarefulTracker,
  usual: KeypointTrack,
  { setup, corrections = [] }: { setup: TimedSetup; corrections?: readonly Correction[] | undefined },
  options: LookCloserOptions,
): Promise<KeypointTrack> {
  try {
    const { measurement } = measureCorrected(usual, setup, corrections);
    return combineLooks(usual, await lookCloser(source, tracker, usual, measurement, options));
  } catch {
    options.signal?.throwIfAborted();
    return usual;
  }
}
