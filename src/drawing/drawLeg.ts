import type { Point } from '../geometry/point';
import type { Side } from '../protocol/side';
import type { FrameLeg } from './frameLeg';
import type { KneeState } from './kneeStateAt';
import type { LaneShape } from './laneShape';
import { picturePointing, quarterTurns, verdictColours, verdictForms } from './verdictForm';

/** Both a page's canvas and one outside a page draw with this. */
export type Context2d = Pick<
  CanvasRenderingContext2D,
  | 'save'
  | 'restore'
  | 'beginPath'
  | 'closePath'
  | 'moveTo'
  | 'lineTo'
  | 'arc'
  | 'fill'
  | 'stroke'
  | 'translate'
  | 'rotate'
  | 'fillStyle'
  | 'strokeStyle'
  | 'lineWidth'
  | 'lineJoin'
  | 'lineCap'
>;

const outline = 'rgba(10, 16, 22, 0.75)';
const legColour = '#FFFFFF';
const laneColour = '86, 180, 233';

/**
 * Draws the lane: a translucent band with its two edges.
 *
 * @param strength  'faint' where the knee can't be judged just now: the edges alone
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

/** Draws the knee in the form and colour of how it stands just now. */
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
    case 'triangle':
      context.rotate((quarterTurns[picturePointing(side, state.direction ?? 'inward')] * Math.PI) / 2);
      triangle(context, radius * 1.25, colour);
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

function disc(context: Context2d, { x, y }: Point, radius: number, colour: string, unit: number): void {
  context.fillStyle = colour;
  context.strokeStyle = outline;
  context.lineWidth = 2 * unit;
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fill();
  context.stroke();
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

function path(context: Context2d, points: readonly Point[]): void {
  context.beginPath();
  points.forEach(({ x, y }, i) => (i === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
}
