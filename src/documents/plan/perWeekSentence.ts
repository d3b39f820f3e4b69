import { message } from '#words/messages/message';
import type { PlanDocument } from './planDocument';

/** How many times a week, in words for the patient; null where the plan leaves it open. */
export function perWeekSentence({ perWeek }: Pick<PlanDocument, 'perWeek'>): string | null {
  return perWeek === null ? null : message('week.times', { count: perWeek });
}
