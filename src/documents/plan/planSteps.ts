import type { Side } from '#core/protocol/side';
import type { PlanItem } from './planDocument';

/** One set in the order in which it is done. */
export interface SetStep {
  item: PlanItem;
  /** In the plan, from 0. */
  itemIndex: number;
  side: Side;
  /** Which set of this item and side, from 1, and of how many. */
  number: number;
  ofSets: number;
  /** What differs from the set before. */
  change: 'first' | 'next-set' | 'other-side' | 'next-item';
  /** Rest before it, s; 0 before the first. */
  restSeconds: number;
}

/**
 * All sets of a plan in order, with rest between: all of one side, then the other side, or set by set in turn; then
 * the next item.
 */
export function planSteps(items: readonly PlanItem[]): SetStep[] {
  const steps: SetStep[] = [];
  for (const [itemIndex, item] of items.entries()) {
    for (const { side, number } of setsOf(item)) {
      const before = steps.at(-1);
      const step = { item, itemIndex, side, number, ofSets: item.sets };
      steps.push({ ...step, change: changeFrom(before, step), restSeconds: before?.item.restSeconds ?? 0 });
    }
  }
  return steps;
}

function setsOf({ sides, sets, sidesInTurn }: PlanItem): Pick<SetStep, 'side' | 'number'>[] {
  const numbers = Array.from({ length: sets }, (_, i) => i + 1);
  return sidesInTurn
    ? numbers.flatMap((number) => sides.map((side) => ({ side, number })))
    : sides.flatMap((side) => numbers.map((number) => ({ side, number })));
}

function changeFrom(
  before: SetStep | undefined,
  { itemIndex, side }: Pick<SetStep, 'itemIndex' | 'side'>,
): SetStep['change'] {
  if (before === undefined) return 'first';
  if (before.itemIndex !== itemIndex) return 'next-item';
  return before.side === side ? 'next-set' : 'other-side';
}
