/**
 * The value that a variable with Fisher's F distribution stays at or below with this probability.
 *
 * @param probability  above 0 and below 1
 * @param between  degrees of freedom of the numerator, above 0; need not be whole
 * @param within  degrees of freedom of the denominator, above 0; need not be whole
 * @returns  above 0; within 1e-6 of the tables that it is tested with, relative
 * @throws  RangeError where an argument is out of range
 * Source:  probability by the incomplete beta function, Abramowitz & Stegun 26.6.2 and 26.5.8, solved by bisection
 */
export function fQuantile(probability: number, between: number, within: number): number {
  if (!(probability > 0 && probability < 1))
    throw new RangeError(`A probability is above 0 and below 1, got ${probability}.`);
  if (!(between > 0 && within > 0 && between < Infinity && within < Infinity))
    throw new RangeError(`Degrees of freedom are above 0, got ${between} and ${within}.`);
  // Of the share x = between f / (between f + within), which stays between 0 and 1 however large f is.
  let [low, high] = [0, 1];
  for (let step = 0; step < 100; step++) {
    const half = (low + high) / 2;
    if (incompleteBeta(half, between / 2, within / 2) < probability) low = half;
    else high = half;
  }
  const share = (low + high) / 2;
  return (within * share) / (between * (1 - share));
}

/** Regularized incomplete beta function I_x(a, b), 0 to 1. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  // The fraction converges fast below the mean; beyond it, the other end is used.
  return x < (a + 1) / (a + b + 2)
    ? (front * continuedFraction(x, a, b)) / a
    : 1 - (front * continuedFraction(1 - x, b, a)) / b;
}

/** Evaluated from front to back, with what would be 0 below a line kept off it (Lentz). */
function continuedFraction(x: number, a: number, b: number): number {
  const off0 = (value: number) => (Math.abs(value) < 1e-300 ? 1e-300 : value);
  let c = 1;
  let d = 1 / off0(1 - ((a + b) * x) / (a + 1));
  let found = d;
  for (let m = 1; m <= 500; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / off0(1 + even * d);
    c = off0(1 + even / c);
    found *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / off0(1 + odd * d);
    c = off0(1 + odd / c);
    const step = d * c;
    found *= step;
    if (Math.abs(step - 1) < 1e-14) break;
  }
  return found;
}

/** Logarithm of the gamma function for x above 0, by Stirling's series above 10 (Abramowitz & Stegun 6.1.41). */
function logGamma(x: number): number {
  let shift = 0;
  while (x < 10) shift -= Math.log(x++);
  const inverse = 1 / (x * x);
  const series = (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse / 1680))) / x;
  return shift + (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + series;
}
