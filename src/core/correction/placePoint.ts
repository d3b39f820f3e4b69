import type { KeypointName } from '../keypoints/keypointNames';
import { otherSidePoint } from './mirrorTrack';
import type { PointChange } from './settleCorrections';

/**
 * The correction that puts a joint where somebody placed it in the picture as it is shown: a correction names
 * points and places of the picture as recorded.
 *
 * @param joint  the person's own
 * @param xNorm  and `yNorm`: shares of the shown picture's width and height
 * @param isMirrored  whether the video is marked as mirrored
 */
export function placePoint(
  joint: KeypointName,
  { timeMs, xNorm, yNorm }: Pick<PointChange, 'timeMs' | 'xNorm' | 'yNorm'>,
  isMirrored: boolean,
): PointChange {
  const point = isMirrored ? otherSidePoint(joint) : joint;
  return { kind: 'move-point', timeMs, point, xNorm: isMirrored ? 1 - xNorm : xNorm, yNorm };
}
