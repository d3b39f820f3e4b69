import type { Point } from '#core/geometry/point';
import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { leastScore } from '#core/keypoints/observedPoint';
import type { MeasureId } from '#core/measures/measures';
import type { Side } from '#core/protocol/side';

/** Between which joints to look for each measure. */
function jointsOf(measure: MeasureId, side: Side): KeypointName[] {
  switch (measure) {
    case 'trunk-lean':
      return ['left_shoulder', 'right_shoulder'];
    case 'pelvic-drop':
    case 'pelvis-place':
      return ['left_hip', 'right_hip'];
    case 'depth':
      return [`${side}_hip`];
    default:
      return [`${side}_knee`];
  }
}

/**
 * Where to look in a frame to see a measure.
 *
 * @returns  px of the picture; null where the joints were not seen
 */
export function lookAt(track: KeypointTrack, frame: number, measure: MeasureId, side: Side): Point | null {
  const points = jointsOf(measure, side).map((name) => frame * keypointCount + keypointNames.indexOf(name));
  if (frame < 0 || points.some((at) => !(track.score[at]! >= leastScore))) return null;
  return {
    x: points.reduce((sum, at) => sum + track.xPx[at]!, 0) / points.length,
    y: points.reduce((sum, at) => sum + track.yPx[at]!, 0) / points.length,
  };
}
