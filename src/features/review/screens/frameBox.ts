import { frameLeg } from '#core/keypoints/frameLeg';
import { nearestFrame } from '#core/scoring/nearestFrame';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { legBox, type Box } from '#ui/drawing/legBox';

/**
 * The part of the picture with the working leg in one frame. It goes by the joints as the network saw them, so that it
 * stays where it is while one of them is moved.
 *
 * Frame:   picture px
 * @param aspect  width over height, above 0
 */
export function frameBox(
  { observed, track, isMirrored, measurement }: ShownRecording,
  timeMs: number,
  aspect: number,
): Box {
  const seen = isMirrored ? track : observed;
  return legBox(frameLeg(seen, nearestFrame(seen.timesMs, timeMs), measurement.setup.side), seen, aspect);
}
