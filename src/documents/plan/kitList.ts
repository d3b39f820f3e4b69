import { findExercise } from '#core/exercises/exercises';
import { needIds, type Need } from '#core/exercises/needs';
import { message } from '#words/messages/message';
import type { Footwear, PlanItem } from './planDocument';

/** One thing to have ready: what, and what keeps it safe. */
export interface KitEntry {
  name: string;
  sentence: string;
}

/** What is needed for all of a plan's items, each thing once. */
export function kitList(items: readonly PlanItem[], footwear: Footwear): KitEntry[] {
  const setups = items.map(({ task }) => findExercise(task).preparation);
  const needs = needIds.filter((need) => setups.some((setup) => setup.needs.includes(need)));
  const isFilmed = setups.some((setup) => setup.isFilmed);
  return [...needs, footwear, ...(isFilmed ? (['clothes'] as const) : [])].map(entryOf);
}

function entryOf(need: Need | Footwear | 'clothes'): KitEntry {
  return { name: message(`need.${need}`), sentence: message(`need.${need}.sentence`) };
}
