export interface ShareInterval {
  share: number;
  low: number;
  high: number;
}

/**
 * A share of a whole number of things with its 95 % confidence interval, by Wilson's score.
 *
 * @param count  whole, 0 to of
 * @param of  whole, 0 or above
 * @returns  0 to 1
 * Missing: null for a share of nothing
 * @throws  RangeError where a number is out of range
 * Source:  Wilson 1927, J Am Stat Assoc 22:209; Newcombe 1998, Stat Med 17:857, method 3
 */
export function shareInterval(count: number, of: number): ShareInterval | null {
  if (!(Number.isInteger(count) && Number.isInteger(of) && count >= 0 && count <= of))
    throw new RangeError(`A share is of whole numbers, 0 to all, got ${count} of ${of}.`);
  if (of === 0) return null;
  const z = 1.96;
  const share = count / of;
  const whole = 1 + z ** 2 / of;
  const middle = (share + z ** 2 / (2 * of)) / whole;
  const half = (z * Math.sqrt((share * (1 - share)) / of + z ** 2 / (4 * of ** 2))) / whole;
  return { share, low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}
