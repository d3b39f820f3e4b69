import { toRadians } from '#core/geometry/degrees';

/**
 * How far to the side of the line from hip to ankle a knee is at a given projection angle.
 *
 * With p and q the distances along the line from the knee's foot point to hip and ankle, the knee at offset h shows the
 * angle atan(h / p) + atan(h / q); solved for h with the sum formula of the tangent.
 *
 * Frame:   picture px
 * @param toHipPx    p, px along the line, above 0
 * @param toAnklePx  q, px along the line, above 0
 * @param angleDeg   degrees, above -90 and below 90
 * @returns  px; 0 for a straight leg
 * Sign:    as the angle's
 * @throws   RangeError for distances that are not above 0 or an angle out of range
 */
export function kneeOffsetPx(toHipPx: number, toAnklePx: number, angleDeg: number): number {
  if (!(toHipPx > 0) || !(toAnklePx > 0))
    throw new RangeError(`Distances must be above 0 px, got ${toHipPx} and ${toAnklePx}.`);
  if (!(Math.abs(angleDeg) < 90))
    throw new RangeError(`The angle must be above -90 and below 90 degrees, got ${angleDeg}.`);
  if (angleDeg === 0) return 0;
  const tangent = Math.tan(toRadians(angleDeg));
  const length = toHipPx + toAnklePx;
  return (Math.hypot(length, 2 * tangent * Math.sqrt(toHipPx * toAnklePx)) - length) / (2 * tangent);
}
