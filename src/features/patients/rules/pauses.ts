import type { Pause } from '#core/adherence/adherence';
import { dayOfDate } from '#core/calendarDay';
import type { PauseRecord } from '#documents/patient/caseEntries';
import { dateInWords, dayWords } from '#words/dateWords';

/** Those that were not taken out, in calendar days. */
export function pausesInForce(pauses: readonly PauseRecord[]): Pause[] {
  return pauses
    .filter(({ withdrawn }) => withdrawn === null)
    .map(({ from, to }) => ({ from: dayOfDate(from), to: to === null ? null : dayOfDate(to) }));
}

/** 'Sunday 5 April 2026 until further notice (AB, Fri 3 Apr 2026).' */
export function pauseSentence({ from, to, at, by, changed }: PauseRecord): string {
  const days =
    to === null
      ? `${dateInWords(from)} until further notice`
      : to === from
        ? dateInWords(from)
        : `${dateInWords(from)} to ${dateInWords(to)}`;
  const changedBy = changed === null ? '' : `; end changed by ${changed.by}, ${dayWords(changed.at)}`;
  return `${days} (${by}, ${dayWords(at)}${changedBy}).`;
}

/** What is wrong with a pause that somebody enters; null where nothing is. */
export function pauseLack(from: string, to: string): string | null {
  if (from === '') return 'Choose the first day of the pause.';
  return to !== '' && to < from ? 'The last day is before the first one. Change one of them.' : null;
}
