import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { sides } from '#core/protocol/side';
import { dayWords } from '#words/dateWords';
import type { AssessmentCourse } from '../rules/assessmentResults';

const size = { width: 320, height: 90, left: 34, right: 10, top: 8, bottom: 18 };

/** Both legs over time, as in the course: left with circles, right with squares. */
export function TestPlot({ course: { assessment, done } }: { course: AssessmentCourse }) {
  const times = done.map(({ record }) => Date.parse(record.at));
  const [first = 0, last = 0] = extent(times);
  const values = done.flatMap(({ results }) => sides.flatMap((side) => results[side] ?? []));
  const [least = 0, most = 0] = extent(values);
  const x = scaleLinear([first, last], [size.left + 6, size.width - size.right - 6]);
  const room = Math.max(1, 0.1 * (most - least));
  const y = scaleLinear([Math.max(0, least - room), most + room], [size.height - size.bottom, size.top]).nice(
    3,
  );
  return (
    <svg
      className="programme-plot"
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label={`${assessment.name}, ${done.length} times, both legs`}
    >
      {y.ticks(3).map((tick) => (
        <g key={tick}>
          <line
            x1={size.left}
            x2={size.width - size.right}
            y1={y(tick)}
            y2={y(tick)}
            className="programme-grid"
          />
          <text x={size.left - 5} y={y(tick) + 4} textAnchor="end">
            {tick}
          </text>
        </g>
      ))}
      {sides.map((side) => {
        const points = done.flatMap(({ record, results }) => {
          const value = results[side];
          return value === null ? [] : [[x(Date.parse(record.at)), y(value)] as const];
        });
        return (
          <g key={side} className={`programme-${side}`}>
            <polyline points={points.map((point) => point.join(',')).join(' ')} />
            {points.map(([px, py], index) =>
              side === 'left' ? (
                <circle key={index} cx={px} cy={py} r={3.5} />
              ) : (
                <rect key={index} x={px - 3} y={py - 3} width={6} height={6} />
              ),
            )}
          </g>
        );
      })}
      <text x={size.left} y={size.height - 4}>
        {dayWords(done[0]!.record.at)}
      </text>
      <text x={size.width - size.right} y={size.height - 4} textAnchor="end">
        {dayWords(done.at(-1)!.record.at)}
      </text>
    </svg>
  );
}
