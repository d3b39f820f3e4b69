import { keypointCount, keypointNames, type KeypointName } from './keypointNames';
import { frameCount, type KeypointTrack } from './keypointTrack';

/** Why an observed point does not count. */
export type PointProblem = 'no-person' | 'joint-unseen' | 'out-of-picture' | 'tracking-jumped';

/** Below this confidence a point is a guess; the pose network's own documentation suggests 0.5. */
export const leastScore = 0.5;

/** One body point over all frames, with what does not count marked. */
export interface PointSeries {
  xPx: Float64Array;
  yPx: Float64Array;
  /** One a frame: null where the point counts. */
  problems: (PointProblem | null)[];
}

/**
 * A body point through the recording.
 *
 * @param jumped  one a frame: true where the tracker follows somebody else
 */
export function observedPoint(
  track: KeypointTrack,
  name: KeypointName,
  jumped: readonly boolean[],
): PointSeries {
  const point = keypointNames.indexOf(name);
  const frames = frameCount(track);
  const series: PointSeries = { xPx: new Float64Array(frames), yPx: new Float64Array(frames), problems: [] };
  for (let frame = 0; frame < frames; frame++) {
    const at = frame * keypointCount + point;
    const x = track.xPx[at]!;
    const y = track.yPx[at]!;
    series.xPx[frame] = x;
    series.yPx[frame] = y;
    series.problems.push(pointProblem(track, frame, x, y, track.score[at]!, jumped[frame] === true));
  }
  return series;
}

function pointProblem(
  track: KeypointTrack,
  frame: number,
  x: number,
  y: number,
  score: number,
  jumped: boolean,
): PointProblem | null {
  // Only a point without any confidence can belong to a frame without a person.
  if (!(score > 0) && !hasPerson(track, frame)) return 'no-person';
  if (jumped) return 'tracking-jumped';
  if (x < 0 || y < 0 || x > track.widthPx || y > track.heightPx) return 'out-of-picture';
  return score < leastScore ? 'joint-unseen' : null;
}

/** Whether the tracker found anybody in a frame. */
export function hasPerson(track: KeypointTrack, frame: number): boolean {
  const from = frame * keypointCount;
  for (let at = from; at < from + keypointCount; at++) if (track.score[at]! > 0) return true;
  return false;
}
