import { findPreparation } from '#core/exercises/findPreparation';
import { needIds, needWords, type Need } from '#core/exercises/needs';
import type { Footwear, PlanItem } from './planDocument';

/** One thing to have ready. */
export interface KitEntry {
  name: string;
  sentence: string;
  /** Null for what is worn. */
  need: Need | null;
}

const footwearEntries: Record<Footwear, Omit<KitEntry, 'need'>> = {
  shoes: { name: 'Shoes', sentence: 'Wear firm shoes with soles that grip, as your plan says.' },
  'bare-feet': { name: 'Bare feet', sentence: 'Take off shoes and socks, as your plan says.' },
  either: { name: 'Shoes or bare feet', sentence: 'Wear firm shoes or go barefoot. Socks alone slip.' },
};

const clothes: Omit<KitEntry, 'need'> = {
  name: 'Visible knees',
  sentence: 'Wear clothes that show the shape of your knees and end above the shoes.',
};

/** What is needed for all of a plan's items, each thing once. */
export function kitList(items: readonly PlanItem[], footwear: Footwear): KitEntry[] {
  const setups = items.map(({ task, sides }) => findPreparation(task, sides[0]!));
  const needs = needIds.filter((need) => setups.some((setup) => setup.needs.includes(need)));
  const isFilmed = setups.some(({ camera }) => camera !== null);
  const worn = [footwearEntries[footwear], ...(isFilmed ? [clothes] : [])];
  return [
    ...needs.map((need) => ({ ...needWords[need], need })),
    ...worn.map((entry) => ({ ...entry, need: null })),
  ];
}
