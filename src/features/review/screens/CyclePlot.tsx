import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { useMemo } from 'react';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useSize } from '#ui/components/useSize';
import { useReviewState } from '../reviewContext';
import { countedRepetitions } from '../rules/countedRepetitions';
import { cycleCurve } from '../rules/cycleCurve';
import { fewestCurves, meanCurve, type MeanPoint } from '../rules/meanCurve';

interface Props {
  recording: ShownRecording;
  selected: number | null;
}

/** The typical repetition of the set with its spread, and the selected one over it, from 0 to 100 % of the movement. */
export function CyclePlot({ recording, selected }: Props) {
  const judgements = useReviewState((state) => state.judgements);
  const { least, most } = useReviewState((state) => state.limits['knee-angle']);
  const { measurement, excluded } = recording;
  const [frame, { width, height }] = useSize<HTMLDivElement>();
  const typical = useMemo(() => {
    const counted = countedRepetitions(measurement, judgements, excluded);
    return meanCurve(counted.map(({ repetition }) => cycleCurve(measurement, repetition)));
  }, [measurement, judgements, excluded]);
  const shown = selected === null ? undefined : measurement.repetitions[selected];
  const own = shown === undefined ? [] : cycleCurve(measurement, shown);
  const seen = typical.filter((point) => point !== null);

  const values = [
    ...own.filter((deg) => deg !== null),
    ...seen.flatMap(({ mean, sd }) => [mean - sd, mean + sd]),
  ];
  const x = scaleLinear([0, 100], [34, width - 8]);
  const y = scaleLinear([Math.min(least - 2, ...values), Math.max(most + 2, ...values)], [height - 20, 6]);
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
    .defined((deg) => deg !== null)
    .x((_, point) => x(point))
    .y((deg) => y(deg!));
  const label =
    seen.length === 0
      ? `Too few measured repetitions for a typical one: it needs ${fewestCurves}.`
      : `Knee angle over the movement: the set’s mean and spread${shown === undefined ? '' : `, with repetition ${shown.number} over it`}`;
  return (
    <figure className="cycle">
      <div ref={frame} className="cycle-frame">
        <svg className="plot-svg" width={width} height={height} role="img" aria-label={label}>
          {width > 0 && (
            <>
              <rect
                className="plot-lane"
                x={34}
                width={Math.max(0, width - 42)}
                y={y(most)}
                height={y(least) - y(most)}
              />
              <line className="plot-zero" x1={34} x2={width - 8} y1={y(0)} y2={y(0)} />
              <path className="cycle-spread" d={spread(typical) ?? ''} />
              <path className="cycle-mean" d={middle(typical) ?? ''} />
              <path className="cycle-own" d={ownLine(own) ?? ''} />
              {y.ticks(4).map((deg) => (
                <text key={deg} className="plot-tick" x={28} y={y(deg)} dy="0.32em" textAnchor="end">
                  {Math.abs(deg)}°
                </text>
              ))}
              {[0, 25, 50, 75, 100].map((pct) => (
                <text
                  key={pct}
                  className="plot-tick"
                  x={x(pct)}
                  y={height - 5}
                  textAnchor={pct === 100 ? 'end' : 'middle'}
                >
                  {pct} %
                </text>
              ))}
            </>
          )}
        </svg>
      </div>
      <figcaption className="small soft">
        {seen.length === 0 ? (
          label
        ) : (
          <>
            <span className="cycle-key cycle-key-mean" /> mean of{' '}
            {Math.max(...seen.map(({ count }) => count))} with one standard deviation{' '}
            <span className="cycle-key cycle-key-own" /> repetition {shown?.number ?? '–'}. Inward is up.
          </>
        )}
      </figcaption>
    </figure>
  );
}
