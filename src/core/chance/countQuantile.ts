/** Chances that differ by less than this differ by rounding alone. */
export const rounding = 1e-9;

/**
 * The smallest count that is not exceeded with at least this chance.
 *
 * @param countChances  chance of each count from 0 on, all together 1
 * @param share  0 to 1; 0.1 gives the lower tenth
 */
export function countQuantile(countChances: readonly number[], share: number): number {
  let upTo = 0;
  const found = countChances.findIndex((chance) => (upTo += chance) >= share - rounding);
  return found < 0 ? countChances.length - 1 : found;
}
