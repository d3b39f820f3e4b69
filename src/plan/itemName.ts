import { findHold } from '../protocol/holds';
import { findTask } from '../protocol/tasks';
import type { PlanItem } from './planDocument';

/** The task or hold of an item, as it stands on screens. */
export function itemName(item: PlanItem): string {
  return item.kind === 'hold' ? findHold(item.task).name : findTask(item.task).name;
}
