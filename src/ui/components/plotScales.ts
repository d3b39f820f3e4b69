import { scaleLinear, type ScaleLinear } from 'd3-scale';
import type { Measurement } from '#core/measurement/measurement';
import type { Limits } from '#core/protocol/limits';

export interface PlotScales {
  /** ms to px. */
  x: ScaleLinear<number, number>;
  /** Degrees, inward positive, to px; inward is up. */
  y: ScaleLinear<number, number>;
}

/** Room around the curve, px: degrees stand on the left, seconds below. */
export const plotMargins = { left: 40, right: 14, top: 8, bottom: 20 };

/** Beyond the limits the plot shows at least this much more, degrees. */
const roomDeg = 6;

/** Scales of the plot over the whole recording: all peaks with their bands, and both limits with room around. */
export function plotScales(
  { timesMs, repetitions }: Measurement,
  limits: Limits,
  size: { width: number; height: number },
): PlotScales {
  const peaks = repetitions.flatMap(({ ranges }) => {
    const { min, max } = ranges['knee-angle'];
    return [(max?.value ?? 0) + (max?.band ?? 0), (min?.value ?? 0) - (min?.band ?? 0)];
  });
  const least = Math.min(limits['knee-angle'].least - roomDeg, ...peaks.map((deg) => deg - 2));
  const greatest = Math.max(limits['knee-angle'].most + roomDeg, ...peaks.map((deg) => deg + 2));
  const { left, right, top, bottom } = plotMargins;
  return {
    x: scaleLinear([timesMs[0] ?? 0, timesMs.at(-1) ?? 1], [left, size.width - right]),
    y: scaleLinear([least, greatest], [size.height - bottom, top]).clamp(true),
  };
}
