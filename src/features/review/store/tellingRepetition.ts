import type { Limits } from '#core/protocol/limits';
import { beyondLimit } from '#core/scoring/beyondLimit';
import type { Judgement } from '#core/scoring/judge';

/**
 * The repetition to look at first: the one that went farthest beyond a limit, or came closest to one.
 *
 * @returns  index; where none was measured the first, and null where there is none
 */
export function tellingRepetition(judgements: readonly Judgement[], limits: Limits): number | null {
  if (judgements.length === 0) return null;
  let [telling, most] = [0, -Infinity];
  judgements.forEach((judgement, index) => {
    const beyond = beyondLimit(judgement, limits);
    if (beyond !== null && beyond > most) [telling, most] = [index, beyond];
  });
  return telling;
}
