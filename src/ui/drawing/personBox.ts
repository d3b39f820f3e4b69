import { quantileSorted } from 'd3-array';
import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { leastScore } from '#core/keypoints/observedPoint';
import type { Box } from './legBox';

/** Room left around the joints, as a share of their height in the picture: the head reaches beyond its points. */
const margin = 0.14;
/**
 * Points farther out than all but this share of them are ignored: somebody else in view for a moment moves no
 * edge.
 */
const strayShare = 0.005;
/** Number of frames, evenly spaced, that is enough to find it. */
const mostFrames = 400;

/**
 * The part of the picture that the person needs through a whole recording.
 *
 * Frame:   picture px
 * @returns  within the picture; the whole picture where nobody was seen
 */
export function personBox({ widthPx, heightPx, xPx, yPx, score }: KeypointTrack): Box {
  const everyFrames = Math.ceil(score.length / keypointCount / mostFrames);
  const isTaken = (at: number) => Math.floor(at / keypointCount) % everyFrames === 0;
  const seen = Array.from(score.keys()).filter((at) => score[at]! >= leastScore && isTaken(at));
  if (seen.length < keypointCount) return { x: 0, y: 0, width: widthPx, height: heightPx };
  const [left, right] = extent(seen.map((at) => xPx[at]!));
  const [top, bottom] = extent(seen.map((at) => yPx[at]!));
  const roomPx = margin * (bottom - top);
  const x = Math.max(0, left - roomPx);
  const y = Math.max(0, top - roomPx);
  return {
    x,
    y,
    width: Math.min(widthPx, right + roomPx) - x,
    height: Math.min(heightPx, bottom + roomPx) - y,
  };
}

function extent(values: number[]): [least: number, greatest: number] {
  values.sort((a, b) => a - b);
  return [quantileSorted(values, strayShare)!, quantileSorted(values, 1 - strayShare)!];
}
