import type { PlanItem } from '#documents/plan/planDocument';

/** Whether each knee is asked about by itself. */
export function worksBothLegs(items: readonly Pick<PlanItem, 'sides'>[]): boolean {
  return new Set(items.flatMap(({ sides }) => sides)).size > 1;
}
