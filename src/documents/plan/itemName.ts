import { findExercise } from '#core/exercises/exercises';
import type { PlanItem } from './planDocument';

/** The task or hold of an item, as screens show it. */
export function itemName(item: PlanItem): string {
  return findExercise(item.task).name;
}
