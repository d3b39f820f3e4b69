import { clamp } from '#core/clamp';

/**
 * The time to ask a video element for so that it shows a certain frame: the middle of the time for which that
 * frame is shown, since a time on the edge between two frames may show either of them.
 *
 * @param timesMs  presentation times, ms, increasing
 * @param frame    index; brought into range
 * @returns  ms; 0 where there is no frame
 */
export function seekTimeMs(timesMs: ArrayLike<number>, frame: number): number {
  const last = timesMs.length - 1;
  if (last < 0) return 0;
  const at = clamp(frame, 0, last);
  const startMs = timesMs[at]!;
  const nextMs = timesMs[at + 1];
  if (nextMs !== undefined) return (startMs + nextMs) / 2;
  const beforeMs = timesMs[at - 1];
  // The last frame is assumed to last as long as the one before it.
  return beforeMs === undefined ? startMs : startMs + (startMs - beforeMs) / 2;
}
