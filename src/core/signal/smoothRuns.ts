import type { LowPass } from './butterworthLowPass';
import { filterZeroPhase } from './filterZeroPhase';
import type { UniformSignal } from './resample';

/** Filters each unbroken run of a signal separately; what is missing stays missing, and nothing leaks across gaps. */
export function smoothRuns(signal: UniformSignal, filter: LowPass): UniformSignal {
  const values = new Float64Array(signal.values.length);
  let start = 0;
  while (start < values.length) {
    if (signal.missing[start] !== 0) {
      start++;
      continue;
    }
    let end = start;
    while (end < values.length && signal.missing[end] === 0) end++;
    values.set(filterZeroPhase(signal.values.subarray(start, end), filter), start);
    start = end;
  }
  return { values, missing: signal.missing };
}
