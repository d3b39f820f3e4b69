import type { NotedConditions } from '#core/conditions/setConditions';
import type { PlanDocument, PlanItem } from './planDocument';

/**
 * Under what a set of a plan's item is done, as far as the plan says so. A set without feedback is a test: what is seen
 * with feedback shows what somebody can do, not what they keep.
 *
 * @param plan  null without one, where only the item is known
 */
export function notedConditions(
  item: PlanItem,
  plan: Pick<PlanDocument, 'footwear'> | null,
): NotedConditions {
  const footwear = plan?.footwear ?? 'either';
  const isCounted = item.kind === 'repetitions';
  return {
    stage: item.stage,
    seatHeightCm: isCounted ? item.seatHeightCm : null,
    stepHeightCm: isCounted ? item.stepHeightCm : null,
    support: item.support,
    load: item.load,
    footwear: footwear === 'either' ? null : footwear,
    freeLeg: null,
    feedback: isCounted ? item.feedback : null,
    isTest: isCounted && item.feedback === 'none',
  };
}
