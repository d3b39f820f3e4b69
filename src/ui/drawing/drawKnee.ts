import type { Point } from '#core/geometry/point';
import type { Side } from '#core/protocol/side';
import type { KneeState } from '#core/scoring/kneeStateAt';
import { disc, outline, path, type Context2d } from './canvasShapes';
import { picturePointing, quarterTurns, verdictColours, verdictForms } from './verdictForm';

/** Draws the knee in the form and colour of its current state. */
export function drawKnee(
  context: Context2d,
  knee: Point,
  state: Pick<KneeState, 'verdict' | 'direction'>,
  side: Side,
  unit: number,
): void {
  const colour = verdictColours[state.verdict];
  const radius = 9 * unit;
  context.save();
  context.translate(knee.x, knee.y);
  context.lineWidth = 2 * unit;
  context.strokeStyle = outline;
  switch (verdictForms[state.verdict]) {
    case 'dot':
      disc(context, { x: 0, y: 0 }, radius, colour, unit);
      break;
    case 'half-dot':
      disc(context, { x: 0, y: 0 }, radius, '#FFFFFF', unit);
      context.fillStyle = colour;
      context.beginPath();
      context.arc(0, 0, radius, Math.PI / 2, (3 * Math.PI) / 2);
      context.fill();
      break;
    case 'ring':
      disc(context, { x: 0, y: 0 }, radius, colour, unit);
      disc(context, { x: 0, y: 0 }, radius * 0.45, '#FFFFFF', unit);
      break;
    case 'triangle':
    case 'open-triangle':
      context.rotate((quarterTurns[picturePointing(side, state.direction ?? 'inward')] * Math.PI) / 2);
      triangle(context, radius * 1.25, colour);
      if (verdictForms[state.verdict] === 'open-triangle') triangle(context, radius * 0.5, '#FFFFFF');
      break;
    case 'dash':
      context.lineCap = 'round';
      for (const [strokeStyle, width] of [
        [outline, 7],
        [colour, 4],
      ] as const) {
        context.strokeStyle = strokeStyle;
        context.lineWidth = width * unit;
        path(context, [
          { x: -radius * 0.7, y: 0 },
          { x: radius * 0.7, y: 0 },
        ]);
        context.stroke();
      }
      break;
  }
  context.restore();
}

/** Points up. */
function triangle(context: Context2d, radius: number, colour: string): void {
  context.fillStyle = colour;
  context.lineJoin = 'round';
  path(context, [
    { x: 0, y: -radius },
    { x: radius * 0.9, y: radius * 0.65 },
    { x: -radius * 0.9, y: radius * 0.65 },
  ]);
  context.closePath();
  context.fill();
  context.stroke();
}
