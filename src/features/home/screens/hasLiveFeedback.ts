import type { PlanItem } from '#documents/plan/planDocument';

/** Whether anything is shown of the knee while it moves; a plan that withholds feedback wants none. */
export function hasLiveFeedback(item: PlanItem): boolean {
  return item.kind === 'repetitions' && ['every-repetition', 'only-outside'].includes(item.feedback);
}
