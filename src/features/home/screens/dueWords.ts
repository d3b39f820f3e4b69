import type { PlanItem } from '#documents/plan/planDocument';
import { message } from '#words/messages/message';

/** How much of an item is due, in few words: '2 sets of 5, right leg', '3 holds of 30 seconds, each leg'. */
export function dueWords(item: PlanItem): string {
  const side = item.sides.length > 1 ? 'each' : item.sides[0]!;
  const { sets } = item;
  return item.kind === 'hold'
    ? message('due.holds', { sets, holds: item.holds, seconds: item.holdSeconds, side })
    : message('due.repetitions', { sets, repetitions: item.repetitions, side });
}
