export const verdicts = ['in-line', 'near-limit', 'out-of-line', 'not-measured'] as const;
export type Verdict = (typeof verdicts)[number];

/** With less of the loaded time measured than this share, nothing is said of a repetition. */
export const leastMeasuredShare = 1 / 3;

/**
 * @param excess  how far a peak is beyond its limit, in its own unit; negative within
 * @param band  half-width of the peak's error band, same unit; 0 for a peak that is known exactly
 */
export function verdictOf(excess: number, band: number): Exclude<Verdict, 'not-measured'> {
  if (excess > band) return 'out-of-line';
  return excess > -band ? 'near-limit' : 'in-line';
}
