import type { Point } from '#core/geometry/point';

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

/** Dark edge of everything drawn over a picture. */
export const outline = 'rgba(10, 16, 22, 0.75)';
export const legColour = '#FFFFFF';

/** A disc with a dark edge; `unit` is the length of one hairline. */
export function disc(
  context: Context2d,
  { x, y }: Point,
  radius: number,
  colour: string,
  unit: number,
): void {
  context.fillStyle = colour;
  context.strokeStyle = outline;
  context.lineWidth = 2 * unit;
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fill();
  context.stroke();
}

/** Begins a path along points. */
export function path(context: Context2d, points: readonly Point[]): void {
  context.beginPath();
  points.forEach(({ x, y }, i) => (i === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
}
