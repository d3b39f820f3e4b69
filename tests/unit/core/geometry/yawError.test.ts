import { describe, expect, it } from 'vitest';
import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';

const toRad = (deg: number) => (deg * Math.PI) / 180;

/**
 * A leg in the plane straight ahead, thigh and shank of length 1, bent by a flexion, seen from far away off square by a
 * yaw: hip and ankle on one upright line, the knee ahead of it by sin(flexion / 2).
 */
function pictureDeg(flexionDeg: number, yawDeg: number): number {
  const [half, yaw] = [toRad(flexionDeg) / 2, toRad(yawDeg)];
  const knee = { x: -Math.sin(half) * Math.sin(yaw), y: Math.cos(half) };
  return Math.abs(kneeProjectionAngleDeg({ x: 0, y: 0 }, knee, { x: 0, y: 2 * Math.cos(half) }, 'left')!);
}

/** The table is printed to a tenth. */
const printed = 0.05 + 1e-9;

describe('the picture angle of a leg that bends straight ahead, seen off square', () => {
  it.each([
    [60, 2, 2.3],
    [60, 5, 5.8],
    [60, 10, 11.5],
    [90, 5, 10],
    [90, 10, 19.7],
  ])('at %i degrees of flexion and %i of yaw is wrong by %f degrees', (flexionDeg, yawDeg, errorDeg) => {
    const formulaDeg =
      (2 * Math.atan(Math.tan(toRad(flexionDeg) / 2) * Math.sin(toRad(yawDeg))) * 180) / Math.PI;
    expect(pictureDeg(flexionDeg, yawDeg)).toBeCloseTo(formulaDeg, 9);
    expect(Math.abs(formulaDeg - errorDeg)).toBeLessThan(printed);
  });
});
