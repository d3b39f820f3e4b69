import type { Repository } from '#device/storage/repository';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';

/**
 * The key that sealed the sessions before a plan came: that of the same plan as it is kept here, else of the last
 * plan that had one.
 *
 * @param repository  null where nothing can be opened
 * @returns  null where there was none, or it is the same
 */
export async function keyBefore(
  { id, returnKey }: PlanDocument,
  repository: Pick<Repository, 'plans'> | null,
): Promise<string | null> {
  if (repository === null) return null;
  const { found } = await repository.plans.list();
  const kept = found.flatMap(({ text }) => {
    try {
      return [parsePlan(text)];
    } catch {
      return []; // One of another version: its key is not known.
    }
  });
  const same = kept.find((plan) => plan.id === id && plan.returnKey !== null);
  const before = same ?? kept.find((plan) => plan.returnKey !== null);
  const key = before?.returnKey ?? null;
  return key === returnKey ? null : key;
}
