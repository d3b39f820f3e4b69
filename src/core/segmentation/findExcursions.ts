/** One departure from the resting level and, where it happened, the return; sample indices. */
export interface Excursion {
  /** Last sample at rest before, or 0 where the signal begins away from rest. */
  leave: number;
  /** First and last sample at the far level; null where it was never reached. */
  farStart: number | null;
  farEnd: number | null;
  /** First sample at rest after, or the last sample where the signal ends away from rest. */
  back: number;
  /** Greatest value in between. */
  peak: number;
  cut: 'none' | 'at-start' | 'at-end';
}

export interface ExcursionLevels {
  /** Rest is below this value. */
  rest: number;
  /** The far level is above this value; well above rest, so that jitter around one threshold counts once. */
  far: number;
  /** An excursion that peaks below this value does not count. */
  least: number;
}

/**
 * Finds departures from rest with two thresholds (hysteresis).
 *
 * @param signal  0 at rest, 1 at the usual far end; missing samples hold the last value
 * @returns  in order of time
 */
export function findExcursions(signal: ArrayLike<number>, levels: ExcursionLevels): Excursion[] {
  const found: Excursion[] = [];
  let open: Excursion | null = null;
  for (let i = 0; i < signal.length; i++) {
    const value = signal[i]!;
    if (open === null) {
      if (value <= levels.rest) continue;
      open = {
        leave: Math.max(0, i - 1),
        farStart: null,
        farEnd: null,
        back: i,
        peak: value,
        cut: i === 0 ? 'at-start' : 'none',
      };
    }
    open.peak = Math.max(open.peak, value);
    open.back = i;
    if (value >= levels.far) {
      open.farStart ??= i;
      open.farEnd = i;
    }
    if (value <= levels.rest) {
      if (open.peak >= levels.least) found.push(open);
      open = null;
    }
  }
  if (open !== null && open.peak >= levels.least)
    found.push({ ...open, cut: open.cut === 'none' ? 'at-end' : open.cut });
  return found;
}
