import type { Repository } from '#device/storage/repository';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';

/**
 * The keys that sealed the sessions before a plan came: those of the same plan as it is kept here, else of the last
 * plan that had any.
 *
 * @param repository  null where nothing can be opened
 * @returns  null where there were none, or they are the same in any order
 */
export async function keysBefore(
  { id, returnKeys }: PlanDocument,
  repository: Pick<Repository, 'plans'> | null,
): Promise<readonly string[] | null> {
  if (repository === null) return null;
  const { found } = await repository.plans.list();
  const kept = found.flatMap(({ text }) => {
    try {
      return [parsePlan(text)];
    } catch {
      return []; // One of another version: its keys are not known.
    }
  });
  const same = kept.find((plan) => plan.id === id && plan.returnKeys.length > 0);
  const before = same ?? kept.find((plan) => plan.returnKeys.length > 0);
  if (before === undefined) return null;
  const now = new Set(returnKeys);
  const isSame = now.size === before.returnKeys.length && before.returnKeys.every((key) => now.has(key));
  return isSame ? null : before.returnKeys;
}
