import type { Point } from '#core/geometry/point';
import { outline, type Context2d } from './canvasShapes';

/** Radius, px on the screen. */
const radiusPx = 44;

/**
 * Draws a ring round what is to be looked at.
 *
 * @param unit  length of one hairline in the context's own units
 */
export function drawRing(context: Context2d, { x, y }: Point, unit: number): void {
  context.save();
  for (const [colour, width] of [
    [outline, 8],
    ['#FFD84D', 4],
  ] as const) {
    context.strokeStyle = colour;
    context.lineWidth = width * unit;
    context.beginPath();
    context.arc(x, y, radiusPx * unit, 0, 2 * Math.PI);
    context.stroke();
  }
  context.restore();
}
