/**
 * Quantile of a set of numbers, by sorting a typed copy: several times as fast as going through any iterable.
 *
 * @param values  finite numbers, any order; left as they are
 * @param share  0 = smallest, 0.5 = median, 1 = largest
 * @returns  interpolated between neighbours; undefined where there are no values
 * Source:   type 7 of Hyndman & Fan 1996, as d3-array and R have it by default
 */
export function quantileOf(values: ArrayLike<number>, share: number): number | undefined {
  if (values.length === 0) return undefined;
  const sorted = Float64Array.from(values).sort();
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  return low + (place - below) * ((sorted[below + 1] ?? low) - low);
}

/** The middle of a set of numbers; undefined where there are none. */
export function medianOf(values: ArrayLike<number>): number | undefined {
  return quantileOf(values, 0.5);
}
