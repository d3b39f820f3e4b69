import { line } from 'd3-shape';
import { memo, useMemo } from 'react';
import type { Measurement } from '#core/measurement/measurement';
import type { Extreme } from '#core/measurement/measureRange';
import { limitEnds } from '#core/measures/limitEnd';
import { findMeasure, type MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import type { Judgement } from '#core/scoring/judge';
import { capitalised } from '#words/capitalised';
import { reasonWords } from '#words/reasonWords';
import { plotMargins, type PlotScales } from './plotScales';
import { reduceCurve } from './reduceCurve';
import { tickWords } from './tickWords';

interface Props {
  measure: MeasureId;
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
  const { measure, measurement, limits, judgements, selected, scales, width, height } = props;
  const { x, y } = scales;
  const { timesMs, curves, repetitions } = measurement;
  const { unit, ways } = findMeasure(measure);
  const values = curves[measure];
  const ends = limits[measure];
  const { runs, gaps } = useMemo(() => reduceCurve(values, width), [values, width]);
  const curve = line<number>(
    (sample) => x(timesMs[sample]!),
    (sample) => y(values.values[sample]!),
  );
  const [left, right] = [plotMargins.left, width - plotMargins.right];
  const floor = height - plotMargins.bottom;
  // Without a limit at one end the lane reaches to the edge.
  const laneTop = ends?.most === undefined ? plotMargins.top : y(ends.most);
  const laneBottom = ends?.least === undefined ? floor : y(ends.least);
  /** What the repetition was judged by or, without a limit, its value. */
  const extremeAt = (index: number): Extreme | null => {
    const judged = judgements[index]?.measures.find((one) => one.measure === measure);
    if (judged !== undefined) return judged.extreme;
    const range = repetitions[index]?.ranges[measure];
    return range === undefined ? null : findMeasure(measure).peak(range);
  };
  const whiskers = repetitions.flatMap((_, index) => extremeAt(index) ?? []);
  const noneBecause =
    runs.length > 0 ? null : (repetitions[0]?.ranges[measure].mainReason ?? gaps[0]?.reason ?? null);
  const worst = selected === null ? null : extremeAt(selected);

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
      {ends !== undefined && (
        <rect
          className="plot-lane"
          x={left}
          width={right - left}
          y={laneTop}
          height={Math.max(0, laneBottom - laneTop)}
        />
      )}
      {limitEnds.map((end) => {
        const limit = ends?.[end];
        return limit === undefined ? null : (
          <line key={end} className="plot-lane-edge" x1={left} x2={right} y1={y(limit)} y2={y(limit)} />
        );
      })}
      <line className="plot-zero" x1={left} x2={right} y1={y(0)} y2={y(0)} />
      {y.ticks(Math.max(2, Math.floor((floor - plotMargins.top) / 26))).map((value) => (
        <text key={value} className="plot-tick" x={left - 6} y={y(value)} dy="0.32em" textAnchor="end">
          {tickWords(measure, value)}
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
        {ways?.most.long ?? capitalised(unit.long.trim())}
      </text>
      {ways !== null && (
        <text className="plot-way" x={left + 6} y={floor - 9}>
          {ways.least.long}
        </text>
      )}
    </>
  );
});
