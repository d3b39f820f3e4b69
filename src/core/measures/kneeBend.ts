import { clamp } from '../clamp';
import { toDegrees, toRadians } from '../geometry/degrees';

/**
 * How far a knee is bent at a depth, where thigh and shank are of one length and lean alike: depth = 1 - cos(bend / 2).
 *
 * @param depth  share of leg length, 0 to 1; values outside are clamped
 * @returns  degrees, 0 (straight) to 180
 */
export function kneeBendDeg(depth: number): number {
  return 2 * toDegrees(Math.acos(clamp(1 - depth, 0, 1)));
}

/**
 * The depth at which a knee is bent so far, under the same condition.
 *
 * @param bendDeg  degrees, 0 to 180
 * @returns  share of leg length, 0 to 1
 */
export function depthOfBend(bendDeg: number): number {
  return 1 - Math.cos(toRadians(clamp(bendDeg, 0, 180)) / 2);
}
