import { longestBridgeMs } from './resample';

/** Usual time between two observations at the slowest useful rate, eight a second, ms. */
const longestIntervalMs = 125;

/**
 * Resamples observations at uneven times to a uniform base, without waiting for later ones.
 *
 * @param rateHz  samples a second
 * @returns  a function from one observation (ms, strictly increasing; a value of any unit, null where unseen)
 *   to the samples that it completes: one, none or a few. Between two observations they are on a straight
 *   line. Across longer gaps, and where nothing is seen, the last value is held. Before the first value there
 *   are none.
 * @throws RangeError where time does not increase
 */
export function createUniformStream(rateHz: number): (timeMs: number, value: number | null) => number[] {
  let startMs = 0;
  let given = 0;
  let last: { timeMs: number; value: number } | null = null;
  return (timeMs, value) => {
    if (last !== null && !(timeMs > last.timeMs)) {
      throw new RangeError(`Times must increase: ${last.timeMs} ms is followed by ${timeMs} ms.`);
    }
    if (last === null) {
      if (value === null) return [];
      [startMs, given, last] = [timeMs, 1, { timeMs, value }];
      return [value];
    }
    const here = value ?? last.value;
    const spanMs = timeMs - last.timeMs;
    const samples: number[] = [];
    for (let atMs; (atMs = startMs + (given * 1000) / rateHz) <= timeMs; given++) {
      const share = spanMs > longestBridgeMs + longestIntervalMs ? 0 : (atMs - last.timeMs) / spanMs;
      samples.push(last.value + share * (here - last.value));
    }
    last = { timeMs, value: here };
    return samples;
  };
}
