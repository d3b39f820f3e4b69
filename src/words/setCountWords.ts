import type { CountInLine } from '#core/chance/countInLine';

/** How many repetitions of a set were in line: '2 to 5 of 6', '6 of 6'. */
export function countRange({ low, high, chancesInLine: { length } }: CountInLine): string {
  return low === high ? `${low} of ${length}` : `${low} to ${high} of ${length}`;
}

/** The same with the most likely number: '2 to 5 of 6 (most likely 4)'. */
export function countWords(count: CountInLine): string {
  const { low, high, mode } = count;
  const isTold = low < high && mode >= low && mode <= high;
  return isTold ? `${countRange(count)} (most likely ${mode})` : countRange(count);
}
