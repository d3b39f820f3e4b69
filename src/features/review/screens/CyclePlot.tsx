import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { useMemo } from 'react';
import { findMeasure } from '#core/measures/measures';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { valueSpan } from '#ui/components/plotScales';
import { tickWords } from '#ui/components/tickWords';
import { useSize } from '#ui/components/useSize';
import { useReviewState } from '../reviewContext';
import { countedRepetitions } from '../rules/countedRepetitions';
import { cycleCurve } from '../rules/cycleCurve';
import { fewestCurves, meanCurve, type MeanPoint } from '../rules/meanCurve';

/** Room around the curves, px: below, the ticks and the name of the axis. */
const margins = { left: 44, right: 8, top: 6, bottom: 36 };

interface Props {
  recording: ShownRecording;
  selected: number | null;
}

/** The typical repetition of the set with its spread, and the selected one over it, from 0 to 100 % of the movement. */
export function CyclePlot({ recording, selected }: Props) {
  const judgements = useReviewState((state) => state.judgements);
  const measure = useReviewState((state) => state.measure);
  const limits = useReviewState((state) => state.limits);
  const { measurement, excluded } = recording;
  const [frame, { width, height }] = useSize<HTMLDivElement>();
  const typical = useMemo(() => {
    const counted = countedRepetitions(measurement, judgements, excluded);
    return meanCurve(counted.map(({ repetition }) => cycleCurve(measurement, repetition, measure)));
  }, [measurement, judgements, excluded, measure]);
  const shown = selected === null ? undefined : measurement.repetitions[selected];
  const own = shown === undefined ? [] : cycleCurve(measurement, shown, measure);
  const seen = typical.filter((point) => point !== null);
  const { name, ways } = findMeasure(measure);
  const ends = limits[measure];

  const values = [
    ...own.filter((value) => value !== null),
    ...seen.flatMap(({ mean, sd }) => [mean - sd, mean + sd]),
  ];
  const [left, right, floor] = [margins.left, width - margins.right, height - margins.bottom];
  const x = scaleLinear([0, 100], [left, right]);
  const y = scaleLinear(valueSpan(measure, limits, values), [floor, margins.top]);
  const laneTop = ends?.most === undefined ? margins.top : y(ends.most);
  const laneBottom = ends?.least === undefined ? floor : y(ends.least);
  const has = (point: MeanPoint | null): point is MeanPoint => point !== null;
  const spread = area<MeanPoint | null>()
    .defined(has)
    .x((point) => x(point!.pct))
    .y0((point) => y(point!.mean - point!.sd))
    .y1((point) => y(point!.mean + point!.sd));
  const middle = line<MeanPoint | null>()
    .defined(has)
    .x((point) => x(point!.pct))
    .y((point) => y(point!.mean));
  const ownLine = line<number | null>()
    .defined((value) => value !== null)
    .x((_, point) => x(point))
    .y((value) => y(value!));
  const label =
    seen.length === 0
      ? `Too few measured repetitions for a typical one: it needs ${fewestCurves}.`
      : `${name} over the movement: the set’s mean and spread${shown === undefined ? '' : `, with repetition ${shown.number} over it`}`;
  return (
    <figure className="cycle">
      <figcaption className="small soft">
        {seen.length === 0 ? (
          label
        ) : (
          <>
            {name}: <span className="cycle-key cycle-key-mean" /> mean of{' '}
            {Math.max(...seen.map(({ count }) => count))} repetitions, shaded one standard deviation either
            way; <span className="cycle-key cycle-key-own" /> repetition {shown?.number ?? '–'}.
            {ways !== null && ` Up is ${ways.most.long}.`}
          </>
        )}
      </figcaption>
      <div ref={frame} className="cycle-frame">
        <svg className="plot-svg" width={width} height={height} role="img" aria-label={label}>
          {width > 0 && (
            <>
              {ends !== undefined && (
                <rect
                  className="plot-lane"
                  x={left}
                  width={Math.max(0, right - left)}
                  y={laneTop}
                  height={Math.max(0, laneBottom - laneTop)}
                />
              )}
              <line className="plot-zero" x1={left} x2={right} y1={y(0)} y2={y(0)} />
              <path className="cycle-spread" d={spread(typical) ?? ''} />
              <path className="cycle-mean" d={middle(typical) ?? ''} />
              <path className="cycle-own" d={ownLine(own) ?? ''} />
              {y.ticks(4).map((value) => (
                <text
                  key={value}
                  className="plot-tick"
                  x={left - 6}
                  y={y(value)}
                  dy="0.32em"
                  textAnchor="end"
                >
                  {tickWords(measure, value)}
                </text>
              ))}
              {[0, 25, 50, 75, 100].map((pct) => (
                <text
                  key={pct}
                  className="plot-tick"
                  x={x(pct)}
                  y={floor + 14}
                  textAnchor={pct === 100 ? 'end' : 'middle'}
                >
                  {pct} %
                </text>
              ))}
              <text className="plot-tick" x={(left + right) / 2} y={floor + 29} textAnchor="middle">
                share of the loaded time, from start to end
              </text>
            </>
          )}
        </svg>
      </div>
    </figure>
  );
}
