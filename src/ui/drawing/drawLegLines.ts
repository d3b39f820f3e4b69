import type { FrameLeg } from '#core/keypoints/frameLeg';
import { disc, legColour, outline, path, type Context2d } from './canvasShapes';

/** Draws the leg's lines, hip to knee to ankle and the foot; unseen joints leave their lines out. */
export function drawLegLines(
  context: Context2d,
  { hip, knee, ankle, heel, toe }: FrameLeg,
  unit: number,
): void {
  const lines = [
    [hip, knee],
    [knee, ankle],
    [ankle, heel],
    [heel, toe],
    [ankle, toe],
  ] as const;
  context.save();
  context.lineCap = context.lineJoin = 'round';
  for (const [colour, width] of [
    [outline, 5],
    [legColour, 2.5],
  ] as const) {
    context.strokeStyle = colour;
    context.lineWidth = width * unit;
    for (const [from, to] of lines) {
      if (from === null || to === null) continue;
      path(context, [from, to]);
      context.stroke();
    }
  }
  for (const joint of [hip, ankle]) {
    if (joint !== null) disc(context, joint, 3.5 * unit, legColour, unit);
  }
  context.restore();
}
