/** A point in the picture: px, x right, y down. */
export interface Point {
  x: number;
  y: number;
}

/** Distance between two points, px, 0 or more. */
export function distancePx(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}
