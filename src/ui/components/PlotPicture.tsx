import { line } from 'd3-shape';
import { memo, useMemo } from 'react';
import type { Measurement } from '#core/measurement/measurement';
import type { Limits } from '#core/protocol/limits';
import { judgementOf, type Judgement } from '#core/scoring/judge';
import { reasonWords } from '#words/reasonWords';
import { plotMargins, type PlotScales } from './plotScales';
import { reduceCurve } from './reduceCurve';

interface Props {
  measurement: Measurement;
  limits: Limits;
  judgements: readonly Judgement[];
  selected: number | null;
  scales: PlotScales;
  width: number;
  height: number;
}

/** The static part of the plot: axes, lane, loaded times and the curve. */
export const PlotPicture = memo(function PlotPicture(props: Props) {
  const { measurement, limits, judgements, selected, scales, width, height } = props;
  const { x, y } = scales;
  const { timesMs, curves, repetitions } = measurement;
  const kneeAngleDeg = curves['knee-angle'];
  const { least, most } = limits['knee-angle'];
  const { runs, gaps } = useMemo(() => reduceCurve(kneeAngleDeg, width), [kneeAngleDeg, width]);
  const curve = line<number>(
    (sample) => x(timesMs[sample]!),
    (sample) => y(kneeAngleDeg.values[sample]!),
  );
  const [left, right] = [plotMargins.left, width - plotMargins.right];
  const floor = height - plotMargins.bottom;
  const laneTop = y(most);
  const laneBottom = y(least);
  const whiskers = judgements.flatMap((one) => judgementOf(one, 'knee-angle').extreme ?? []);
  const noneBecause =
    runs.length > 0 ? null : (repetitions[0]?.ranges['knee-angle'].mainReason ?? gaps[0]?.reason ?? null);
  const shown = selected === null ? undefined : judgements[selected];
  const worst = shown === undefined ? null : judgementOf(shown, 'knee-angle').extreme;

  return (
    <>
      {repetitions.map(({ number, loadedFrom, loadedTo }, index) => (
        <rect
          key={number}
          className={index === selected ? 'plot-loaded plot-loaded-selected' : 'plot-loaded'}
          x={x(timesMs[loadedFrom]!)}
          width={Math.max(1, x(timesMs[loadedTo]!) - x(timesMs[loadedFrom]!))}
          y={plotMargins.top}
          height={floor - plotMargins.top}
        />
      ))}
      <rect className="plot-lane" x={left} width={right - left} y={laneTop} height={laneBottom - laneTop} />
      {[laneTop, laneBottom].map((edge, i) => (
        <line key={i} className="plot-lane-edge" x1={left} x2={right} y1={edge} y2={edge} />
      ))}
      <line className="plot-zero" x1={left} x2={right} y1={y(0)} y2={y(0)} />
      {y.ticks(Math.max(2, Math.floor((floor - plotMargins.top) / 26))).map((deg) => (
        <text key={deg} className="plot-tick" x={left - 6} y={y(deg)} dy="0.32em" textAnchor="end">
          {Math.abs(deg)}°
        </text>
      ))}
      {x.ticks(Math.max(2, Math.floor((right - left) / 80))).map((timeMs) => (
        <text key={timeMs} className="plot-tick" x={x(timeMs)} y={height - 5} textAnchor="middle">
          {timeMs / 1000} s
        </text>
      ))}
      {gaps.map(({ from, to, reason }) => (
        <rect
          key={from}
          className="plot-gap"
          x={x(timesMs[from]!)}
          width={Math.max(1, x(timesMs[to]!) - x(timesMs[from]!))}
          y={floor - 4}
          height={4}
        >
          <title>Not measured: {reasonWords(reason).short}</title>
        </rect>
      ))}
      <path className="plot-curve" d={runs.map((run) => curve(run) ?? '').join('')} />
      {whiskers.map(({ timeMs, value, band }) => (
        <path key={timeMs} className="plot-band" d={`M${x(timeMs)} ${y(value + band)}V${y(value - band)}`} />
      ))}
      {noneBecause !== null && (
        <text className="plot-none" x={(left + right) / 2} y={y(0) - 8} textAnchor="middle">
          Not measured
          <tspan x={(left + right) / 2} dy="1.6em">
            {reasonWords(noneBecause).short}
          </tspan>
        </text>
      )}
      {worst !== null && <circle className="plot-worst" cx={x(worst.timeMs)} cy={y(worst.value)} r="5" />}
      <text className="plot-way" x={left + 6} y={plotMargins.top + 11}>
        inward
      </text>
      <text className="plot-way" x={left + 6} y={floor - 9}>
        outward
      </text>
    </>
  );
});
