import { outline, path, type Context2d } from './canvasShapes';
import type { LaneShape } from './laneShape';

const laneColour = '#56B4E9';

/**
 * Draws the lane: its two edges, with nothing between them, so that the leg keeps its colour.
 *
 * @param strength  'faint' where the knee can't be judged at this moment
 * @param unit      length of one hairline in the context's own units
 */
export function drawLane(
  context: Context2d,
  { inward, outward }: LaneShape,
  strength: 'full' | 'faint',
  unit: number,
): void {
  context.save();
  context.lineJoin = 'round';
  const layers: [colour: string, width: number][] =
    strength === 'full'
      ? [
          [outline, 4],
          [laneColour, 2],
        ]
      : [[laneColour, 1]];
  for (const [colour, width] of layers) {
    context.strokeStyle = colour;
    context.lineWidth = width * unit;
    for (const edge of [inward, outward]) {
      path(context, edge);
      context.stroke();
    }
  }
  context.restore();
}
