import type { Point } from '#core/geometry/point';
import { outline, path, type Context2d } from './canvasShapes';

/**
 * Draws a plumb line that rises from the foot.
 *
 * @param foot  px of the picture
 * @param topY  how far up it goes, px of the picture
 * @param unit  picture px for one px on the screen
 */
export function drawPlumbLine(context: Context2d, foot: Point, topY: number, unit: number): void {
  context.save();
  context.lineCap = 'round';
  for (const [colour, width] of [
    [outline, 4],
    ['#FFFFFF', 2],
  ] as const) {
    context.strokeStyle = colour;
    context.lineWidth = width * unit;
    path(context, [foot, { x: foot.x, y: topY }]);
    context.stroke();
  }
  context.restore();
}
