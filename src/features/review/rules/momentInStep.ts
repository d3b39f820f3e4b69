import { clamp } from '#core/clamp';
import type { MeasuredRepetition } from '#core/measurement/measurement';

type Timed = Pick<MeasuredRepetition, 'loadedFrom' | 'loadedTo' | 'events'>;

/**
 * The time in one repetition that matches a share of the movement in any other: 0 % where the load begins, 50 % at the
 * turning point (the middle of standing, or the lowest or farthest point), 100 % where the load ends.
 *
 * @param timesMs  the measurement's uniform time base, ms
 * @param pct  0 to 100; values outside are clamped
 * @returns  ms; where the turning point was not seen, the middle of the time is used instead
 */
export function momentInStepMs(repetition: Timed, timesMs: Float64Array, pct: number): number {
  const { fromMs, turnMs, toMs } = partsOf(repetition, timesMs);
  const share = clamp(pct, 0, 100) / 50;
  return share <= 1 ? fromMs + share * (turnMs - fromMs) : turnMs + (share - 1) * (toMs - turnMs);
}

/** The share of the movement at a time, 0 to 100 %; the other way round. */
export function stepPctAt(repetition: Timed, timesMs: Float64Array, timeMs: number): number {
  const { fromMs, turnMs, toMs } = partsOf(repetition, timesMs);
  const at = clamp(timeMs, fromMs, toMs);
  if (at <= turnMs) return turnMs === fromMs ? 0 : (50 * (at - fromMs)) / (turnMs - fromMs);
  return 50 + (50 * (at - turnMs)) / (toMs - turnMs);
}

function partsOf({ loadedFrom, loadedTo, events }: Timed, timesMs: Float64Array) {
  const [fromMs, toMs] = [timesMs[loadedFrom]!, timesMs[loadedTo]!];
  const { bottomMs, topMs, topEndMs } = events;
  const seenMs = bottomMs ?? (topMs === null || topEndMs === null ? null : (topMs + topEndMs) / 2);
  const isWithin = seenMs !== null && seenMs > fromMs && seenMs < toMs;
  return { fromMs, turnMs: isWithin ? seenMs : (fromMs + toMs) / 2, toMs };
}
