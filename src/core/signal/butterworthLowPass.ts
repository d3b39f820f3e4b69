/** Coefficients of y[n] = a0 x[n] + a1 x[n-1] + a2 x[n-2] + b1 y[n-1] + b2 y[n-2]. */
export interface LowPass {
  a0: number;
  a1: number;
  a2: number;
  b1: number;
  b2: number;
}

/**
 * Second-order Butterworth low-pass.
 *
 * @param cutoffHz  frequency at which the amplitude falls to 0.707, above 0 and below half the rate
 * @param rateHz  samples a second
 * @param passes  2 where the filter runs forward and back: the cut-off then holds for both passes together
 * @throws RangeError where the cut-off is not between 0 and half the rate
 * Source:  Biomedical Engineering and Design Handbook, p. 139; dual pass divides by (sqrt 2 - 1)^(1/4) = 0.8022
 */
export function butterworthLowPass(cutoffHz: number, rateHz: number, passes: 1 | 2): LowPass {
  if (!(cutoffHz > 0 && cutoffHz < rateHz / 2)) {
    throw new RangeError(`Cut-off must lie between 0 and ${rateHz / 2} Hz, got ${cutoffHz} Hz.`);
  }
  const wc = Math.tan((Math.PI * cutoffHz) / rateHz) / (passes === 2 ? (Math.SQRT2 - 1) ** 0.25 : 1);
  const k1 = Math.SQRT2 * wc;
  const k2 = wc * wc;
  const a0 = k2 / (1 + k1 + k2);
  const k3 = (2 * a0) / k2;
  return { a0, a1: 2 * a0, a2: a0, b1: k3 - 2 * a0, b2: 1 - 2 * a0 - k3 };
}
