import type { Limits } from '#core/protocol/limits';
import { beyondLimit } from '#core/scoring/beyondLimit';
import type { Judgement } from '#core/scoring/judge';
import { byGravity } from '#core/scoring/verdict';

/** Graver verdicts first; what was not measured shows nothing. */
const order = [...byGravity.filter((verdict) => verdict !== 'not-measured'), 'not-measured'];

/**
 * The repetition to view first: of those with the gravest verdict, the one that went farthest beyond a limit, or came
 * closest to one. One that does not count is viewed first only where none counts.
 *
 * @param excluded  why a repetition does not count; null or left out where it counts
 * @returns  index; null where there is no repetition
 */
export function tellingRepetition(
  judgements: readonly Judgement[],
  limits: Limits,
  excluded: readonly (string | null)[] = [],
): number | null {
  const keyed = judgements.map((judgement, index) => ({
    index,
    rank: order.indexOf(judgement.verdict) + ((excluded[index] ?? null) === null ? 0 : order.length),
    beyond: beyondLimit(judgement, limits) ?? -Infinity,
  }));
  const [first] = keyed.sort(
    (a, b) => a.rank - b.rank || (a.beyond === b.beyond ? a.index - b.index : b.beyond - a.beyond),
  );
  return first?.index ?? null;
}
