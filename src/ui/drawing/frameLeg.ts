import type { Point } from '#core/geometry/point';
import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { leastScore } from '#core/keypoints/observedPoint';
import type { Side } from '#core/protocol/side';

/** One leg in one frame, picture px; a joint that was not seen well enough is null. */
export interface FrameLeg {
  hip: Point | null;
  knee: Point | null;
  ankle: Point | null;
  heel: Point | null;
  toe: Point | null;
}

/** The observed joints of a leg in a frame; all null for a frame that is not there. */
export function frameLeg(track: KeypointTrack, frame: number, side: Side): FrameLeg {
  const joint = (name: KeypointName): Point | null => {
    const at = frame * keypointCount + keypointNames.indexOf(name);
    const score = track.score[at];
    if (frame < 0 || score === undefined || score < leastScore) return null;
    return { x: track.xPx[at]!, y: track.yPx[at]! };
  };
  return {
    hip: joint(`${side}_hip`),
    knee: joint(`${side}_knee`),
    ankle: joint(`${side}_ankle`),
    heel: joint(`${side}_heel`),
    toe: joint(`${side}_foot_index`),
  };
}
