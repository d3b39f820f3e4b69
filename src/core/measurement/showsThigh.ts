import { distancePx } from '../geometry/point';
import type { FrameLeg } from '../keypoints/frameLeg';
import { leastThighShare } from '../measures/kneeAngle';

/**
 * Whether one picture shows the thigh at enough of its length to tell its direction, which takes hip, knee and ankle.
 * One picture does not show how long the thigh is, so the shank stands in for it: the two are about equally long.
 */
export function showsThigh({ hip, knee, ankle }: FrameLeg): boolean {
  if (hip === null || knee === null || ankle === null) return false;
  return distancePx(hip, knee) >= leastThighShare * distancePx(knee, ankle);
}
