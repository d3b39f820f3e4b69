import { findHold } from '#core/exercises/holds';
import { findTask } from '#core/exercises/tasks';
import type { PlanItem } from './planDocument';

/** The task or hold of an item, as it stands on screens. */
export function itemName(item: PlanItem): string {
  return item.kind === 'hold' ? findHold(item.task).name : findTask(item.task).name;
}
