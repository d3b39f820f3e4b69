import type { PlanItem } from '#documents/plan/planDocument';
import { worksBothLegs } from '../rules/worksBothLegs';
import type { SaidPain } from './homeState';

const neither = { left: null, right: null };

/** Each knee unanswered, where both legs work; null where one question is enough. */
export function kneesNotAsked(items: readonly Pick<PlanItem, 'sides'>[]): SaidPain['painBySide'] {
  return worksBothLegs(items) ? { before: neither, after: neither } : null;
}
