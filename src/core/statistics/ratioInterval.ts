import { requireFinite } from './requireFinite';

export interface RatioInterval {
  ratio: number;
  low: number;
  high: number;
}

/**
 * 95 % confidence interval of a ratio of two measured values, by Fieller's theorem: all ratios r for which
 * a - r b is within 1.96 of its standard error, sqrt(sa^2 + r^2 sb^2), of 0.
 *
 * @param a  with its standard error sa, any unit
 * @param b  the same unit; not 0
 * @returns  low and high are not equally far from the ratio
 * Missing: null where b is not distinguishable from 0, so that the ratio may be anything
 * @throws  RangeError where a number is not finite, b is 0, or an error is below 0
 * Source:  Fieller 1954, J R Stat Soc B 16:175 (from memory), for independent errors
 */
export function ratioInterval(a: number, b: number, sa: number, sb: number): RatioInterval | null {
  requireFinite([a, b, sa, sb]);
  if (b === 0) throw new RangeError('A ratio to 0 has no value.');
  if (sa < 0 || sb < 0) throw new RangeError(`A standard error is 0 or above, got ${sa} and ${sb}.`);
  const g = ((1.96 * sb) / b) ** 2;
  if (g >= 1) return null;
  const ratio = a / b;
  const half = (1.96 / Math.abs(b)) * Math.sqrt(sa ** 2 * (1 - g) + ratio ** 2 * sb ** 2);
  return { ratio, low: (ratio - half) / (1 - g), high: (ratio + half) / (1 - g) };
}
