import { otherSide, type Side } from '../protocol/side';
import { missingAt, pointAt, type SmoothPoints } from './smoothPoints';

/**
 * Sideways distance of the free foot from the working one, share of leg length; where unseen, the last value
 * is held.
 */
export function freeFootAside(points: SmoothPoints, side: Side, legLengthPx: number | null): Float64Array {
  const ankles = [points.point(`${side}_ankle`), points.point(`${otherSide(side)}_ankle`)] as const;
  const aside = new Float64Array(points.timesMs.length);
  for (let i = 0; i < aside.length; i++) {
    const seen = missingAt(ankles, i) === 0;
    aside[i] = seen
      ? Math.abs(pointAt(ankles[1], i).x - pointAt(ankles[0], i).x) / (legLengthPx ?? 1)
      : (aside[i - 1] ?? 0);
  }
  return aside;
}
