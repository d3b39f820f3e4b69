import type { Repository } from '#device/storage/repository';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';

/** The plan that a session follows, as it is kept here; null where there is none, or it can't be read. */
export async function followedPlan(
  planId: string | null,
  { plans }: Pick<Repository, 'plans'>,
): Promise<PlanDocument | null> {
  try {
    const text = planId === null ? null : await plans.find(planId);
    return text === null ? null : parsePlan(text);
  } catch {
    return null;
  }
}
