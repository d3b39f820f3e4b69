import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { dateInWords } from '#words/dateWords';
import type { ScoreSeries } from '../rules/questionnaireCourse';
import { SmallPlot, smallPlot } from './SmallPlot';

/** A score over time. */
export function ScorePlot({ series: { name, points } }: { series: ScoreSeries }) {
  const [first = 0, last = 0] = extent(points, ({ on }) => Date.parse(on));
  const [least = 0, most = 0] = extent(points, ({ value }) => value);
  const { left, right, inset, width, height, top, bottom } = smallPlot;
  const x = scaleLinear([first, last], [left + inset, width - right - inset]);
  const room = Math.max(1, 0.1 * (most - least));
  const y = scaleLinear([least - room, most + room], [height - bottom, top]).nice(3);
  const places = points.map(({ on, value }) => [x(Date.parse(on)), y(value)] as const);
  return (
    <SmallPlot
      label={`${name}, ${points.length} times`}
      y={y}
      from={dateInWords(points[0]!.on)}
      to={dateInWords(points.at(-1)!.on)}
    >
      <polyline points={places.map((place) => place.join(',')).join(' ')} />
      {places.map(([px, py], index) => (
        <circle key={index} cx={px} cy={py} r={3.5} />
      ))}
    </SmallPlot>
  );
}
