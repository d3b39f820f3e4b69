import type { PlanDocument } from './planDocument';

/** How many times a week, in words for the patient; null where the plan leaves it open. */
export function perWeekSentence({ perWeek }: Pick<PlanDocument, 'perWeek'>): string | null {
  if (perWeek === null) return null;
  return perWeek === 1 ? 'Once a week.' : perWeek === 2 ? 'Twice a week.' : `${perWeek} times a week.`;
}
