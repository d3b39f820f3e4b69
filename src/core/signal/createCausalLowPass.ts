import type { LowPass } from './butterworthLowPass';

/**
 * A low-pass for a signal that is still coming in: it needs no later samples, so it lags slightly.
 *
 * @param filter  single-pass coefficients
 * @returns  a function from one sample to the smoothed one; it starts in the steady state of its first sample
 */
export function createCausalLowPass({ a0, a1, a2, b1, b2 }: LowPass): (value: number) => number {
  let state: [x1: number, x2: number, y1: number, y2: number] | null = null;
  return (value) => {
    const [x1, x2, y1, y2] = state ?? [value, value, value, value];
    const smooth = a0 * value + a1 * x1 + a2 * x2 + b1 * y1 + b2 * y2;
    state = [value, x1, smooth, y1];
    return smooth;
  };
}
