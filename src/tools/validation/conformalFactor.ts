/**
 * By how much bands have to be multiplied so that the next error lies within its band with a given chance: the
 * ceil((n + 1) chance)-th smallest of the n ratios of error to band. The errors must not have set the bands, and the
 * next one must be like them; nothing is assumed of their distribution.
 *
 * @param ratios  absolute error over half-width, 0 or more, in any order
 * @param chance  above 0, below 1
 * @returns  1 = the bands are as wide as promised, below 1 = wider; Infinity where there are too few errors to tell
 * @throws  RangeError where a ratio is below 0 or not a number, or the chance is not between 0 and 1
 * Source:  split conformal prediction (Vovk et al. 2005; Lei et al. 2018, doi 10.1080/01621459.2017.1307116)
 */
export function conformalFactor(ratios: readonly number[], chance = 0.9): number {
  if (!(chance > 0 && chance < 1)) throw new RangeError(`A chance is between 0 and 1, got ${chance}.`);
  const wrong = ratios.find((ratio) => !(ratio >= 0));
  if (wrong !== undefined) throw new RangeError(`A ratio is 0 or above, got ${wrong}.`);
  const sorted = ratios.toSorted((a, b) => a - b);
  // Less what rounding adds: (9 + 1) 0.9 is 9.
  const place = Math.ceil((sorted.length + 1) * chance - 1e-9);
  return sorted[place - 1] ?? Infinity;
}
