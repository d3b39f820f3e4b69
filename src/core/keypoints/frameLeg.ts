import type { Point } from '../geometry/point';
import type { Side } from '../protocol/side';
import { keypointCount, keypointNames, type KeypointName } from './keypointNames';
import type { KeypointRow, KeypointTrack } from './keypointTrack';
import { leastScore } from './observedPoint';

/** One leg in one frame, picture px; a joint that was not seen well enough is null. */
export interface FrameLeg {
  hip: Point | null;
  knee: Point | null;
  ankle: Point | null;
  heel: Point | null;
  toe: Point | null;
}

/** The observed joints of a leg in a frame of a track; all null for a frame that is not there. */
export function frameLeg(track: KeypointTrack, frame: number, side: Side): FrameLeg {
  return legOf(side, (point) => {
    const at = frame * keypointCount + point;
    const score = track.score[at];
    if (frame < 0 || score === undefined || score < leastScore) return null;
    return { x: track.xPx[at]!, y: track.yPx[at]! };
  });
}

/** The same of a frame as the tracker returns it. */
export function rowLeg(row: KeypointRow, side: Side): FrameLeg {
  return legOf(side, (point) => {
    const [x, y, score] = [row[point * 3]!, row[point * 3 + 1]!, row[point * 3 + 2]!];
    return Number.isFinite(x + y) && score >= leastScore ? { x, y } : null;
  });
}

/** @param pointAt  by the point's place among `keypointNames` */
function legOf(side: Side, pointAt: (point: number) => Point | null): FrameLeg {
  const joint = (name: KeypointName) => pointAt(keypointNames.indexOf(name));
  return {
    hip: joint(`${side}_hip`),
    knee: joint(`${side}_knee`),
    ankle: joint(`${side}_ankle`),
    heel: joint(`${side}_heel`),
    toe: joint(`${side}_foot_index`),
  };
}
