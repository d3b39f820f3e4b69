/** A signal on a uniform time base, with what is missing marked. */
export interface UniformSignal {
  /** 0 where missing. */
  values: Float64Array;
  /** 0 = there is a value; any other number = the code of the reason why there is none. */
  missing: Uint8Array;
}

/** Longest stretch without an observation that interpolation may bridge, ms, on top of the usual frame interval. */
export const longestBridgeMs = 100;

/**
 * Resamples observations at uneven times to a uniform base by linear interpolation.
 *
 * @param timesMs  when each observation was made, strictly increasing, ms
 * @param values  one an observation, any unit
 * @param missing  one an observation: 0 = it counts, otherwise the code of the reason why not
 * @param baseMs  the uniform times, ms
 * @param frameIntervalMs  usual time between two observations
 * @param gapCode  code for a stretch that lost its frames and gave no reason of its own
 * @returns  as many samples as baseMs; missing wherever neighbouring observations that count are more than
 *   longestBridgeMs + frameIntervalMs apart, and before the first and after the last
 */
export function resample(
  timesMs: Float64Array,
  values: ArrayLike<number>,
  missing: Uint8Array,
  baseMs: Float64Array,
  frameIntervalMs: number,
  gapCode: number,
): UniformSignal {
  const result = { values: new Float64Array(baseMs.length), missing: new Uint8Array(baseMs.length) };
  const longestMs = longestBridgeMs + frameIntervalMs + 1e-6;
  let before = -1; // last observation that counts at or before the sample
  let after = nextCounting(missing, 0); // first one that counts after it
  let nearest = 0; // observation at or just before the sample, counting or not
  for (let i = 0; i < baseMs.length; i++) {
    const atMs = baseMs[i]!;
    while (after < timesMs.length && timesMs[after]! <= atMs) {
      before = after;
      after = nextCounting(missing, after + 1);
    }
    while (nearest + 1 < timesMs.length && timesMs[nearest + 1]! <= atMs) nearest++;
    if (before >= 0 && timesMs[before] === atMs) {
      result.values[i] = values[before]!;
    } else if (before >= 0 && after < timesMs.length && timesMs[after]! - timesMs[before]! <= longestMs) {
      const share = (atMs - timesMs[before]!) / (timesMs[after]! - timesMs[before]!);
      result.values[i] = values[before]! + share * (values[after]! - values[before]!);
    } else {
      result.missing[i] = missing[nearest] || missing[nearest + 1] || gapCode;
    }
  }
  return result;
}

function nextCounting(missing: Uint8Array, from: number): number {
  let index = from;
  while (index < missing.length && missing[index] !== 0) index++;
  return index;
}

/**
 * Uniform times from the first to the last observation.
 *
 * @param rateHz  samples a second
 */
export function uniformTimesMs(firstMs: number, lastMs: number, rateHz: number): Float64Array {
  const count = Math.floor(((lastMs - firstMs) * rateHz) / 1000 + 1e-6) + 1;
  return Float64Array.from({ length: count }, (_, i) => firstMs + (i * 1000) / rateHz);
}
