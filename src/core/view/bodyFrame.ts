import { toDegrees, toRadians } from '../geometry/degrees';
import { emptyPath, type Path } from './path';

/**
 * Turns a path about the vertical so that the body faces the camera squarely.
 *
 * @param yawDeg  how far the body is turned from the camera, degrees; positive = its front points to the picture's
 *   right (towards its own left)
 * @returns  x to the person's left, y down, z backwards
 */
export function toBodyFrame({ x, y, z }: Path, yawDeg: number): Path {
  const [cos, sin] = cosSin(yawDeg);
  const turned = emptyPath(x.length);
  for (let i = 0; i < x.length; i++) {
    turned.x[i] = x[i]! * cos + z[i]! * sin;
    turned.z[i] = z[i]! * cos - x[i]! * sin;
  }
  turned.y.set(y);
  return turned;
}

export function cosSin(deg: number): [number, number] {
  const rad = toRadians(deg);
  return [Math.cos(rad), Math.sin(rad)];
}

/**
 * Horizontal direction from one point to another, seen from above.
 *
 * @returns  degrees, above -180 to 180; 0 = towards the camera, positive = towards the picture's right
 */
export function headingDeg(from: Path, to: Path, i: number): number {
  return toDegrees(Math.atan2(to.x[i]! - from.x[i]!, from.z[i]! - to.z[i]!));
}
