/**
 * The value for which Student's t has 95 % of its probability between minus and plus it.
 *
 * @param freedom  degrees of freedom, whole, 1 or more
 * @returns  12.706 for 1, falling towards 1.960
 * @throws  RangeError where freedom is not a whole number of 1 or more
 * Source:  probability by Abramowitz & Stegun 26.7.3 and 26.7.4, solved for t by bisection
 */
export function studentQuantile95(freedom: number): number {
  if (!(Number.isInteger(freedom) && freedom >= 1)) {
    throw new RangeError(`Degrees of freedom are whole and 1 or more, got ${freedom}.`);
  }
  let [low, high] = [1.9, 13];
  for (let step = 0; step < 60; step++) {
    const half = (low + high) / 2;
    if (probabilityWithin(half, freedom) < 0.95) low = half;
    else high = half;
  }
  return (low + high) / 2;
}

/** Probability that Student's t is between -t and t. */
function probabilityWithin(t: number, freedom: number): number {
  const angle = Math.atan2(t, Math.sqrt(freedom));
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const isOdd = freedom % 2 === 1;
  // Odd: cos + 2/3 cos^3 + 2/3 4/5 cos^5 ...; even: 1 + 1/2 cos^2 + 1/2 3/4 cos^4 ...; up to cos^(freedom - 2).
  let term = isOdd ? cos : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let power = isOdd ? 3 : 2; power <= freedom - 2; power += 2) {
    term *= ((power - 1) / power) * cos * cos;
    sum += term;
  }
  return isOdd ? (2 / Math.PI) * (angle + sin * sum) : sin * sum;
}
