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

/** All sets of a plan in order: all of one side, then the other side, then the next item, with rest between. */
export function planSteps(items: readonly PlanItem[]): SetStep[] {
  const steps: SetStep[] = [];
  for (const [itemIndex, item] of items.entries()) {
    for (const side of item.sides) {
      for (let number = 1; number <= item.sets; number++) {
        const before = steps.at(-1);
        const step = { item, itemIndex, side, number, ofSets: item.sets };
        steps.push({ ...step, change: changeFrom(before, step), restSeconds: before?.item.restSeconds ?? 0 });
      }
    }
  }
  return steps;
}

function changeFrom(
  before: SetStep | undefined,
  { itemIndex, side }: Pick<SetStep, 'itemIndex' | 'side'>,
): SetStep['change'] {
  if (before === undefined) return 'first';
  if (before.itemIndex !== itemIndex) return 'next-item';
  return before.side === side ? 'next-set' : 'other-side';
}
