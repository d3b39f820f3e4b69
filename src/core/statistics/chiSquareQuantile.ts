/**
 * The value that a chi-square variable stays at or below with this probability.
 *
 * @param probability  above 0 and below 1
 * @param freedom  degrees of freedom, whole, 1 or more
 * @returns  above 0; within 1e-8 of the values that it is tested with, relative
 * @throws  RangeError where an argument is out of range
 * Source:  probability by the series of the incomplete gamma function, Abramowitz & Stegun 6.5.29 and 26.4.19, solved by
 *   bisection
 */
export function chiSquareQuantile(probability: number, freedom: number): number {
  if (!(probability > 0 && probability < 1))
    throw new RangeError(`A probability is above 0 and below 1, got ${probability}.`);
  if (!(Number.isInteger(freedom) && freedom >= 1))
    throw new RangeError(`Degrees of freedom are whole and 1 or more, got ${freedom}.`);
  let [low, high] = [0, freedom + 1];
  while (chiSquareCdf(high, freedom) < probability) high *= 2;
  for (let step = 0; step < 100; step++) {
    const half = (low + high) / 2;
    if (chiSquareCdf(half, freedom) < probability) low = half;
    else high = half;
  }
  return (low + high) / 2;
}

/** Probability that a chi-square variable is at most x: P(a, y) = e^-y y^a / gamma(a + 1) (1 + y/(a+1) + ...). */
function chiSquareCdf(x: number, freedom: number): number {
  if (x <= 0) return 0;
  const [a, y] = [freedom / 2, x / 2];
  let term = 1;
  let sum = 1;
  for (let n = 1; term > 1e-17 * sum; n++) {
    term *= y / (a + n);
    sum += term;
  }
  return Math.exp(a * Math.log(y) - y - logGammaOfNext(freedom) + Math.log(sum));
}

/** Logarithm of gamma(freedom / 2 + 1), from gamma(1) = 1 or gamma(1/2) = sqrt pi. */
function logGammaOfNext(freedom: number): number {
  let log = freedom % 2 === 0 ? 0 : Math.log(Math.sqrt(Math.PI));
  for (let a = freedom % 2 === 0 ? 1 : 0.5; a <= freedom / 2; a++) log += Math.log(a);
  return log;
}
