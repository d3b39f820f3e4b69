import { sides, type Side } from '../protocol/side';
import type { FootPath } from '../segmentation/findRepetitions';
import { missingAt, pointAt, type SmoothPoints } from './smoothPoints';

/** Where each foot is in the picture, share of leg length, any origin; where unseen, the last position is held. */
export function feetPaths(points: SmoothPoints, legLengthPx: number | null): FootPath[] {
  return sides.map((side) => footPath(points, side, legLengthPx ?? 1));
}

function footPath(points: SmoothPoints, side: Side, legLengthPx: number): FootPath {
  const ankle = points.point(`${side}_ankle`);
  const samples = points.timesMs.length;
  const path = { x: new Float64Array(samples), y: new Float64Array(samples) };
  let last: { x: number; y: number } | null = null;
  for (let i = 0; i < samples; i++) {
    if (missingAt([ankle], i) === 0) {
      const { x, y } = pointAt(ankle, i);
      const here = { x: x / legLengthPx, y: y / legLengthPx };
      if (last === null) {
        path.x.fill(here.x, 0, i);
        path.y.fill(here.y, 0, i);
      }
      last = here;
    }
    path.x[i] = last?.x ?? 0;
    path.y[i] = last?.y ?? 0;
  }
  return path;
}
