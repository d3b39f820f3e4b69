import { useMemo, useState, type PointerEvent, type ReactNode } from 'react';
import { clamp } from '#core/clamp';
import type { Measurement } from '#core/measurement/measurement';
import { findMeasure, type MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import type { Judgement } from '#core/scoring/judge';
import { EdgeHandles, type PlotEdges } from './EdgeHandles';
import './plot.css';
import { PlotPicture } from './PlotPicture';
import { plotMargins, plotScales } from './plotScales';
import { readoutAt } from './readoutAt';
import { RepetitionStrip } from './RepetitionStrip';
import { useSize } from './useSize';

interface Props {
  /** Which one is shown over time. */
  measure: MeasureId;
  measurement: Measurement;
  limits: Limits;
  judgements: readonly Judgement[];
  selected: number | null;
  /** Current time of the video. */
  timeMs: number;
  onSeek: (timeMs: number) => void;
  onSelect: (index: number) => void;
  /** Start and end of the selected repetition, where they can be moved. */
  edges?: PlotEdges | null;
  /** The heading. */
  children: ReactNode;
}

/** A measure over time with its lane, the repetitions below it, and the video's time; a press seeks the video. */
export function MeasurePlot(props: Props) {
  const {
    measure,
    measurement,
    limits,
    judgements,
    selected,
    timeMs,
    onSeek,
    onSelect,
    edges = null,
    children,
  } = props;
  const [area, { width, height }] = useSize<HTMLDivElement>();
  const [hoverMs, setHoverMs] = useState<number | null>(null);
  const scales = useMemo(
    () => plotScales(measurement, limits, { width, height }, measure),
    [measurement, limits, width, height, measure],
  );
  const [startMs = 0, endMs = 0] = scales.x.domain();
  const { repetitions } = measurement;
  const middlesPx = useMemo(
    () =>
      measurement.repetitions.map(({ loadedFrom, loadedTo }) => {
        const { timesMs } = measurement;
        return (scales.x(timesMs[loadedFrom]!) + scales.x(timesMs[loadedTo]!)) / 2;
      }),
    [measurement, scales],
  );

  const timeUnder = (event: PointerEvent<HTMLDivElement>): number => {
    const px = event.clientX - event.currentTarget.getBoundingClientRect().left;
    return clamp(scales.x.invert(px), startMs, endMs);
  };
  const cursor = scales.x(clamp(timeMs, startMs, endMs));

  return (
    <section className="plot" aria-label={`${findMeasure(measure).name} over time`}>
      <header className="plot-head">
        <h2 className="visually-hidden">{findMeasure(measure).name}</h2>
        {children}
        <span className="plot-readout number">{readoutAt(measurement, hoverMs ?? timeMs, measure)}</span>
      </header>
      <div className="plot-frame">
        <div
          ref={area}
          className="plot-area"
          role="slider"
          tabIndex={0}
          aria-label="Time in the video"
          aria-valuemin={Math.round(startMs)}
          aria-valuemax={Math.round(endMs)}
          aria-valuenow={Math.round(timeMs)}
          aria-valuetext={readoutAt(measurement, timeMs, measure)}
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            onSeek(timeUnder(event));
          }}
          onPointerMove={(event) => {
            setHoverMs(timeUnder(event));
            if (event.buttons === 1) onSeek(timeUnder(event));
          }}
          onPointerLeave={() => setHoverMs(null)}
        >
          <svg className="plot-svg" width={width} height={height} aria-hidden="true">
            {width > 0 && (
              <PlotPicture
                measure={measure}
                measurement={measurement}
                limits={limits}
                judgements={judgements}
                selected={selected}
                scales={scales}
                width={width}
                height={height}
              />
            )}
            {hoverMs !== null && (
              <line
                className="plot-hover"
                x1={scales.x(hoverMs)}
                x2={scales.x(hoverMs)}
                y1={plotMargins.top}
                y2={height - plotMargins.bottom}
              />
            )}
            <line className="plot-cursor" x1={cursor} x2={cursor} y1={0} y2={height - plotMargins.bottom} />
          </svg>
        </div>
        {edges !== null && width > 0 && <EdgeHandles edges={edges} scales={scales} onSeek={onSeek} />}
      </div>
      <RepetitionStrip
        measure={measure}
        hasLane={limits[measure] !== undefined}
        repetitions={repetitions}
        judgements={judgements}
        middlesPx={middlesPx}
        selected={selected}
        onSelect={onSelect}
      />
    </section>
  );
}
