import { useState, type KeyboardEvent, type PointerEvent } from 'react';
import { clamp } from '#core/clamp';
import { formatTime } from '#words/formatTime';
import { plotMargins, type PlotScales } from './plotScales';

export interface PlotEdges {
  /** Number of the repetition. */
  number: number;
  startMs: number;
  endMs: number;
  /** Time between two samples, ms. */
  stepMs: number;
  onMove: (edge: 'start' | 'end', toMs: number) => void;
}

interface Props {
  edges: PlotEdges;
  scales: PlotScales;
  /** While an edge is moved, so that the video can show where. */
  onSeek: (timeMs: number) => void;
}

/** Two handles on the plot, at the start and the end of a repetition: to be dragged, or moved by arrow keys. */
export function EdgeHandles({ edges, scales, onSeek }: Props) {
  return (['start', 'end'] as const).map((edge) => (
    <EdgeHandle key={edge} edge={edge} edges={edges} scales={scales} onSeek={onSeek} />
  ));
}

function EdgeHandle({ edge, edges, scales, onSeek }: Props & { edge: 'start' | 'end' }) {
  const { number, startMs, endMs, stepMs, onMove } = edges;
  const ownMs = edge === 'start' ? startMs : endMs;
  /** Where it is while being moved; null at rest. */
  const [movingMs, setMovingMs] = useState<number | null>(null);
  const [firstMs = 0, lastMs = 0] = scales.x.domain();
  const atMs = movingMs ?? ownMs;

  const move = (timeMs: number) => {
    const bounded = clamp(timeMs, firstMs, lastMs);
    setMovingMs(bounded);
    onSeek(bounded);
  };
  const finish = () => {
    if (movingMs === null) return;
    setMovingMs(null);
    if (Math.abs(movingMs - ownMs) >= stepMs / 2) onMove(edge, movingMs);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const steps = { ArrowLeft: -1, ArrowRight: 1, PageDown: -10, PageUp: 10 }[event.key];
    if (steps !== undefined) move(atMs + steps * stepMs);
    else if (event.key === 'Escape') setMovingMs(null);
    else if (event.key === 'Enter') finish();
    else return;
    event.preventDefault();
  };
  const onPointerMove = (event: PointerEvent<HTMLDivElement>) => {
    if (event.buttons !== 1 || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const frame = event.currentTarget.parentElement!.getBoundingClientRect();
    move(scales.x.invert(event.clientX - frame.left));
  };
  return (
    <div
      className={`plot-edge plot-edge-${edge} no-print`}
      style={{ left: `${scales.x(atMs)}px`, top: plotMargins.top, bottom: plotMargins.bottom }}
      role="slider"
      tabIndex={0}
      data-own-keys
      aria-label={`${edge === 'start' ? 'Start' : 'End'} of repetition ${number}`}
      aria-valuemin={Math.round(firstMs)}
      aria-valuemax={Math.round(lastMs)}
      aria-valuenow={Math.round(atMs)}
      aria-valuetext={
        movingMs === null ? formatTime(atMs) : `${formatTime(atMs)}, Enter sets it, Escape leaves it`
      }
      onKeyDown={onKeyDown}
      onBlur={finish}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={onPointerMove}
      onPointerUp={finish}
    />
  );
}
