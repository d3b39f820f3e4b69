/**
 * Index of the frame whose time is nearest to a time; the earlier one where two are equally near.
 *
 * @param timesMs  ms, increasing, at least one
 * @returns  0 to length - 1; -1 where there is none
 */
export function nearestFrame(timesMs: ArrayLike<number>, timeMs: number): number {
  let low = 0;
  let high = timesMs.length - 1;
  if (high < 0) return -1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (timesMs[middle]! <= timeMs) low = middle;
    else high = middle;
  }
  return timeMs - timesMs[low]! <= timesMs[high]! - timeMs ? low : high;
}
