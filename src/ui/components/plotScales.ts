import { scaleLinear, type ScaleLinear } from 'd3-scale';
import type { Measurement } from '#core/measurement/measurement';
import { findMeasure, type MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';

export interface PlotScales {
  /** ms to px. */
  x: ScaleLinear<number, number>;
  /** The measure in its own unit and sign to px; up is more. */
  y: ScaleLinear<number, number>;
}

/** Room around the curve, px: the values on the left, seconds below. */
export const plotMargins = { left: 44, right: 14, top: 8, bottom: 20 };

/** The plot shows at least so much beyond the limits, and beyond the bands, as shares of the first proposed limit. */
const room = { limit: 0.6, band: 0.2 };

/** Scales of the plot over the whole recording: all peaks with their bands, and the limits with room around. */
export function plotScales(
  { timesMs, repetitions }: Measurement,
  limits: Limits,
  size: { width: number; height: number },
  measure: MeasureId = 'knee-angle',
): PlotScales {
  const [least, most] = valueSpan(
    measure,
    limits,
    repetitions.flatMap(({ ranges }) => {
      const { min, max } = ranges[measure];
      return [(max?.value ?? 0) + (max?.band ?? 0), (min?.value ?? 0) - (min?.band ?? 0)];
    }),
  );
  const { left, right, top, bottom } = plotMargins;
  return {
    x: scaleLinear([timesMs[0] ?? 0, timesMs.at(-1) ?? 1], [left, size.width - right]),
    y: scaleLinear([least, most], [size.height - bottom, top]).clamp(true),
  };
}

/** From where to where a plot of a measure goes: 0, all given values and the limits are in it. */
export function valueSpan(
  measure: MeasureId,
  limits: Limits,
  values: readonly number[],
): [least: number, most: number] {
  const { least, most } = limits[measure] ?? {};
  const unit = Math.abs(findMeasure(measure).limits.most.first);
  const ends = [0, ...values];
  return [
    Math.min((least ?? 0) - room.limit * unit, Math.min(...ends) - room.band * unit),
    Math.max((most ?? 0) + room.limit * unit, Math.max(...ends) + room.band * unit),
  ];
}
