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

/**
 * Probability that a normal error with mean 0 is at most so large.
 *
 * @param room  may be infinite
 * @param sd  one standard deviation, same unit, 0 or more; with 0 there is no error, and a room of 0 is enough
 */
export function chanceOfRoom(room: number, sd: number): number {
  return sd === 0 ? Number(room >= 0) : normalCdf(room / sd);
}

/** Density of the standard normal distribution at z. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}
