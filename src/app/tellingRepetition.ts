import type { Limits } from '../protocol/limits';
import type { Judgement } from '../scoring/judge';

/**
 * The repetition to look at first: the one whose knee went farthest beyond its limit, or came closest to it.
 *
 * @returns  index; where none was measured the first, and null where there is none
 */
export function tellingRepetition(judgements: readonly Judgement[], limits: Limits): number | null {
  if (judgements.length === 0) return null;
  let [telling, mostDeg] = [0, -Infinity];
  judgements.forEach(({ worst, direction }, index) => {
    if (worst === null) return;
    const excessDeg =
      direction === 'outward' ? -worst.value - limits.kneeOutwardDeg : worst.value - limits.kneeInwardDeg;
    if (excessDeg > mostDeg) [telling, mostDeg] = [index, excessDeg];
  });
  return telling;
}
