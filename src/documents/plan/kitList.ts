import { findExercise } from '#core/exercises/exercises';
import { needIds, type Need } from '#core/exercises/needs';
import { message } from '#words/messages/message';
import type { Footwear, PlanItem } from './planDocument';

/** One thing to have ready: what, and what keeps it safe. */
export interface KitEntry {
  name: string;
  sentence: string;
  /** Null for what is worn. */
  need: Need | null;
}

/** What is needed for all of a plan's items, each thing once. */
export function kitList(items: readonly PlanItem[], footwear: Footwear): KitEntry[] {
  const setups = items.map(({ task }) => findExercise(task).preparation);
  const loads = new Set<Need>(
    items.flatMap(({ load }) => (load === null || load.kind === 'none' ? [] : load.kind)),
  );
  const needs = needIds.filter(
    (need) => loads.has(need) || setups.some((setup) => setup.needs.includes(need)),
  );
  const isFilmed = setups.some((setup) => setup.isFilmed);
  const worn = [footwear, ...(isFilmed ? (['clothes'] as const) : [])];
  return [
    ...needs.map((need) => ({ ...wordsOf(need), need })),
    ...worn.map((one) => ({ ...wordsOf(one), need: null })),
  ];
}

function wordsOf(one: Need | Footwear | 'clothes'): Omit<KitEntry, 'need'> {
  return { name: message(`need.${one}`), sentence: message(`need.${one}.sentence`) };
}
