import type { Side } from '#core/protocol/side';
import { exerciseSetup } from '#words/exerciseWords';
import { setupFacts } from './itemFacts';
import type { PlanItem } from './planDocument';

/** What to set up for a set, in order: how to stand, then the figures of the plan (seat, step, hold, load, bend). */
export function setupLines(item: PlanItem, side: Side): string[] {
  return [...exerciseSetup(item.task, side), ...setupFacts(item)];
}
