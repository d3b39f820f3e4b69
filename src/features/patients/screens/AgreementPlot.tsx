import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import type { Repeat } from '#core/reliability/ownError';
import type { Agreement } from '#core/statistics/blandAltman';
import { oneDecimal } from '#words/oneDecimal';
import { SmallPlot, smallPlot } from './SmallPlot';

const { left, right, width, height, top, bottom, inset } = smallPlot;

/** Second less first of each repeat over the mean of both (Bland & Altman 1986), with the limits and their intervals. */
export function AgreementPlot({ repeats, limits }: { repeats: readonly Repeat[]; limits: Agreement }) {
  const points = repeats.map(({ first, second }) => ({
    mean: (first + second) / 2,
    difference: second - first,
  }));
  const { meanDifference, lowerLimit, upperLimit, ofMean, ofLowerLimit, ofUpperLimit } = limits;
  const lines = [
    { name: 'mean', value: meanDifference, interval: ofMean },
    { name: 'limit', value: lowerLimit, interval: ofLowerLimit },
    { name: 'limit', value: upperLimit, interval: ofUpperLimit },
  ];
  const [least = 0, most = 0] = extent(points, ({ mean }) => mean);
  const x = scaleLinear([least, most], [left + inset, width - right - inset]);
  const ends = lines.flatMap(({ interval: { low, high } }) => [low, high]);
  const differences = points.map(({ difference }) => difference);
  const [lowest = 0, highest = 0] = extent([0, ...ends, ...differences]);
  const y = scaleLinear([lowest, highest], [height - bottom, top]).nice(3);
  const degrees = (value: number) => `${oneDecimal(value)}°`;
  return (
    <figure className="programme-agreement">
      <SmallPlot
        label={`Second less first, ${repeats.length} repeats`}
        y={y}
        tickWords={degrees}
        from={degrees(least)}
        to={degrees(most)}
      >
        {lines.map(({ name, value, interval: { low, high } }) => (
          <g key={value} className={`programme-${name}`}>
            <rect x={left} width={width - left - right} y={y(high)} height={Math.max(0, y(low) - y(high))} />
            <line x1={left} x2={width - right} y1={y(value)} y2={y(value)} />
          </g>
        ))}
        {points.map(({ mean, difference }, index) => (
          <circle key={index} cx={x(mean)} cy={y(difference)} r={3} />
        ))}
      </SmallPlot>
      <figcaption className="small soft">
        Up: second less first. Across: mean of both. Solid line: mean difference; dashed: limits of agreement;
        shaded: their 95 % intervals.
      </figcaption>
    </figure>
  );
}
