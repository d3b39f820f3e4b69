import { clamp } from '../clamp';

/** Shares of a movement between which its edge is extrapolated. */
const near = 0.03;
const far = 0.2;

/**
 * When a movement begins or ends, inferred from its first or last stretch.
 *
 * A smooth movement leaves rest with the third power of time, so its true edge is well before it shows above
 * the noise. The edge is where the cube root of the distance from rest, continued in a straight line, is
 * zero.
 *
 * @param distance  distance from rest at a sample, as a share of the whole movement
 * @param from  a sample inside the movement
 * @param step  -1 to find the start, 1 to find the end
 * @param stop  last sample that may be used
 * @returns  ms, between the times of stop and from
 * Source:   minimum-jerk profile of reaching movements (Flash & Hogan 1985, from memory): 10 t^3 at its start
 */
export function movementEdgeMs(
  timesMs: Float64Array,
  distance: (sample: number) => number,
  from: number,
  step: 1 | -1,
  stop: number,
): number {
  const farMs = crossingMs(timesMs, distance, from, step, stop, far);
  const nearMs = crossingMs(timesMs, distance, from, step, stop, near);
  const slope = (Math.cbrt(far) - Math.cbrt(near)) / (farMs - nearMs);
  const edgeMs = farMs === nearMs ? nearMs : nearMs - Math.cbrt(near) / slope;
  const [low, high] = [Math.min(timesMs[stop]!, timesMs[from]!), Math.max(timesMs[stop]!, timesMs[from]!)];
  return clamp(edgeMs, low, high);
}

/** When the distance first falls to a level, interpolated between samples; the time of stop where it never does. */
function crossingMs(
  timesMs: Float64Array,
  distance: (sample: number) => number,
  from: number,
  step: 1 | -1,
  stop: number,
  level: number,
): number {
  for (let i = from; i !== stop; i += step) {
    const here = distance(i);
    const next = distance(i + step);
    if (next > level) continue;
    const share = here > next ? clamp((here - level) / (here - next), 0, 1) : 0;
    return timesMs[i]! + share * (timesMs[i + step]! - timesMs[i]!);
  }
  return timesMs[stop]!;
}
