import { toDegrees } from '#core/geometry/degrees';

/**
 * How far off the camera's axis something is seen.
 *
 * @param xPx  px from the picture's left edge
 * @returns  degrees, positive = to the picture's right
 */
export function bearingDeg(xPx: number, widthPx: number, focalPx: number): number {
  return toDegrees(Math.atan2(xPx - widthPx / 2, focalPx));
}
