/** From here on less than 1e-15 is left on the far side. */
const reach = 8;

/**
 * Probability that a standard normal value is at most z.
 *
 * @param z  in standard deviations; may be infinite
 * @returns  0 to 1, 0.5 for 0; within 1e-15 of the true value, so a small one far below 0 has no exact digits
 * Source:   Abramowitz & Stegun 26.2.11, 1/2 + Z(z) (z + z^3/3 + z^5/(3 5) + ...)
 */
export function normalCdf(z: number): number {
  if (Math.abs(z) >= reach) return z > 0 ? 1 : 0;
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > 1e-17 * Math.abs(sum); odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return 0.5 + normalDensity(z) * sum;
}

/** Density of the standard normal distribution at z. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}
