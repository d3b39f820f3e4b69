import type { LowPass } from './butterworthLowPass';

/** Samples mirrored at each end so that the filter has settled where the signal starts: three times its order plus one. */
const padding = 9;

/**
 * Runs a low-pass forward and back over a signal, so that nothing shifts in time.
 *
 * Ends are extended by odd reflection (the signal turned about its end point) and each pass starts in the steady
 * state of its first sample.
 *
 * @param signal  uniform samples, any unit
 * @returns  as many samples; a signal shorter than 10 samples is returned unchanged
 * Source:  the method of scipy.signal.filtfilt (padtype 'odd', padlen 9)
 */
export function filterZeroPhase(signal: Float64Array, filter: LowPass): Float64Array {
  const count = signal.length;
  if (count <= padding) return signal.slice();
  const padded = new Float64Array(count + 2 * padding);
  padded.set(signal, padding);
  const first = signal[0]!;
  const last = signal[count - 1]!;
  for (let i = 1; i <= padding; i++) {
    padded[padding - i] = 2 * first - signal[i]!;
    padded[padding + count - 1 + i] = 2 * last - signal[count - 1 - i]!;
  }
  runOnce(padded, filter);
  padded.reverse();
  runOnce(padded, filter);
  padded.reverse();
  return padded.slice(padding, padding + count);
}

function runOnce(signal: Float64Array, { a0, a1, a2, b1, b2 }: LowPass): void {
  let x1 = signal[0]!;
  let x2 = x1;
  let y1 = x1;
  let y2 = x1;
  for (let i = 0; i < signal.length; i++) {
    const x = signal[i]!;
    const y = a0 * x + a1 * x1 + a2 * x2 + b1 * y1 + b2 * y2;
    x2 = x1;
    x1 = x;
    y2 = y1;
    y1 = y;
    signal[i] = y;
  }
}
