import { exerciseName } from '#words/exerciseWords';
import type { PlanItem } from './planDocument';

/** The task or hold of an item, as screens show it. */
export function itemName(item: PlanItem): string {
  return exerciseName(item.task);
}
