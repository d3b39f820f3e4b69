import fc from 'fast-check';
import type { Point } from '#core/geometry/point';

/** Hip, knee and ankle anywhere in a picture, thigh and shank 20 px long or more. */
export const anyLeg = fc
  .tuple(anyPoint(), anyPoint(), anyPoint())
  .filter(([hip, knee, ankle]) => apart(hip, knee) && apart(knee, ankle));

function anyPoint(): fc.Arbitrary<Point> {
  return fc.record({ x: fc.integer({ min: 0, max: 1919 }), y: fc.integer({ min: 0, max: 1080 }) });
}

function apart(a: Point, b: Point): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) >= 20;
}

export function moved(joints: readonly Point[], byPx: number): Point[] {
  return joints.map(({ x, y }) => ({ x: x + byPx, y: y - 0.7 * byPx }));
}

export function scaled(joints: readonly Point[], factor: number): Point[] {
  return joints.map(({ x, y }) => ({ x: x * factor, y: y * factor }));
}

export function rotated(joints: readonly Point[], deg: number): Point[] {
  const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  return joints.map(({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos }));
}

/** As a picture 1920 px wide shows it in a mirror. */
export function mirrored(joints: readonly Point[]): Point[] {
  return joints.map(({ x, y }) => ({ x: 1920 - x, y }));
}
