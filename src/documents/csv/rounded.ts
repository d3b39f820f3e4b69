/**
 * A number for a table, with at most this many decimals; null stays null.
 *
 * @param value  finite; never comes back as -0
 */
export function rounded(value: number | null, decimals: number): number | null {
  return value === null ? null : Number(value.toFixed(decimals)) + 0;
}
