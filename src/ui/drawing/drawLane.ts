import { path, type Context2d } from './canvasShapes';
import type { LaneShape } from './laneShape';

const laneColour = '86, 180, 233';

/**
 * Draws the lane: a translucent band with its two edges.
 *
 * @param strength  'faint' where the knee can't be judged at this moment: the edges alone
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
  if (strength === 'full') {
    context.fillStyle = `rgba(${laneColour}, 0.3)`;
    path(context, [...inward, ...outward.toReversed()]);
    context.closePath();
    context.fill();
  }
  context.strokeStyle = `rgba(${laneColour}, ${strength === 'full' ? 0.95 : 0.55})`;
  context.lineWidth = (strength === 'full' ? 1.5 : 1) * unit;
  for (const edge of [inward, outward]) {
    path(context, edge);
    context.stroke();
  }
  context.restore();
}
