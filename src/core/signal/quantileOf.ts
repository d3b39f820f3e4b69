import { quickselect } from 'd3-array';

/**
 * Quantile of a set of numbers, picked out of a typed copy: several times as fast as sorting it.
 *
 * @param values  finite numbers, any order; not mutated
 * @param share  0 = smallest, 0.5 = median, 1 = largest
 * @returns  interpolated between neighbours; undefined where there are no values
 * Source:   type 7 of Hyndman & Fan 1996, the default of d3-array and R
 */
export function quantileOf(values: ArrayLike<number>, share: number): number | undefined {
  if (values.length === 0) return undefined;
  const copy = new Float64Array(values);
  const place = share * (copy.length - 1);
  const below = Math.floor(place);
  quickselect(copy, below);
  const low = copy[below]!;
  // Everything to its left is smaller, everything to its right larger.
  let next = copy[below + 1] ?? low;
  for (let i = below + 2; i < copy.length; i++) if (copy[i]! < next) next = copy[i]!;
  return low + (place - below) * (next - low);
}

/** The middle of a set of numbers; undefined where there are none. */
export function medianOf(values: ArrayLike<number>): number | undefined {
  return quantileOf(values, 0.5);
}
