import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { sides } from '#core/protocol/side';
import { dayWords } from '#words/dateWords';
import type { AssessmentCourse } from '../rules/assessmentResults';
import { SmallPlot, smallPlot } from './SmallPlot';

/** Both legs over time, as in the course: left with circles, right with squares. */
export function TestPlot({ course: { assessment, done } }: { course: AssessmentCourse }) {
  const times = done.map(({ record }) => Date.parse(record.at));
  const [first = 0, last = 0] = extent(times);
  const values = done.flatMap(({ results }) => sides.flatMap((side) => results[side] ?? []));
  const [least = 0, most = 0] = extent(values);
  const x = scaleLinear(
    [first, last],
    [smallPlot.left + smallPlot.inset, smallPlot.width - smallPlot.right - smallPlot.inset],
  );
  const room = Math.max(1, 0.1 * (most - least));
  const y = scaleLinear(
    [Math.max(0, least - room), most + room],
    [smallPlot.height - smallPlot.bottom, smallPlot.top],
  ).nice(3);
  return (
    <SmallPlot
      label={`${assessment.name}, ${done.length} times, both legs`}
      y={y}
      from={dayWords(done[0]!.record.at)}
      to={dayWords(done.at(-1)!.record.at)}
    >
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
    </SmallPlot>
  );
}
