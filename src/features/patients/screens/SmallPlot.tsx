import type { ScaleLinear } from 'd3-scale';
import type { ReactNode } from 'react';

/** In the units of the picture; what is drawn keeps `inset` from the sides. */
export const smallPlot = { width: 320, height: 90, left: 34, right: 10, top: 8, bottom: 18, inset: 6 };
const { width, height, left, right } = smallPlot;

interface Props {
  label: string;
  y: ScaleLinear<number, number>;
  /** On a tick; the number alone if left out. */
  tickWords?: (tick: number) => string;
  /** What stands below at the left and at the right end: the first and the last day, for example. */
  from: string;
  to: string;
  children: ReactNode;
}

/** The frame of a small plot, mostly over days: lines across, and both ends of what is across below. */
export function SmallPlot({ label, y, tickWords = String, from, to, children }: Props) {
  return (
    <svg className="programme-plot" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      {y.ticks(3).map((tick) => (
        <g key={tick}>
          <line x1={left} x2={width - right} y1={y(tick)} y2={y(tick)} className="programme-grid" />
          <text x={left - 5} y={y(tick) + 4} textAnchor="end">
            {tickWords(tick)}
          </text>
        </g>
      ))}
      {children}
      <text x={left} y={height - 4}>
        {from}
      </text>
      <text x={width - right} y={height - 4} textAnchor="end">
        {to}
      </text>
    </svg>
  );
}
