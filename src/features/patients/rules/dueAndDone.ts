import { max } from 'd3-array';
import type { Adherence } from '#core/adherence/adherence';
import { calendarDay } from '#core/calendarDay';
import type { PauseRecord } from '#documents/patient/caseEntries';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { followingOf, planAdherence } from './planAdherence';

/** How much of a plan was done. */
export interface DueAndDone {
  /** Sessions that were done, or stopped because the plan asks for that. */
  done: number;
  /** Of them those without filming, as the patient says. */
  unfilmed: number;
  /** Against what was due in each week; null where the plan leaves open how often. */
  byWeek: Pick<Adherence, 'done' | 'due'> | null;
  /** Days, by the calendar, since anything was done; null where nothing was. */
  silentDays: number | null;
}

/** What of a plan was due and done up to now. */
export function dueAndDone(
  plan: Pick<PlanDocument, 'id' | 'createdAt' | 'perWeek'>,
  sessions: readonly ListedSession[],
  pauses: readonly PauseRecord[],
  nowMs: number,
): DueAndDone {
  const following = followingOf(plan, sessions);
  const done = following.occasions.filter(({ outcome }) => outcome !== 'given-up');
  const lastDay = max(done, ({ day }) => day);
  return {
    done: done.length,
    unfilmed: done.filter(({ outcome }) => outcome === 'unfilmed').length,
    byWeek: planAdherence(following, pauses, nowMs),
    silentDays: lastDay === undefined ? null : Math.max(0, calendarDay(nowMs) - lastDay),
  };
}

/** '11 sessions done (1 without filming), 10 of the 11 due in their week; the last one 2 days ago'. */
export function dueWords({ done, unfilmed, byWeek, silentDays }: DueAndDone): string {
  const without = unfilmed === 0 ? '' : ` (${unfilmed} without filming)`;
  const count = `${done} ${done === 1 ? 'session' : 'sessions'} done${without}${inTimeWords(byWeek)}`;
  if (silentDays === null) return count;
  const ago = silentDays === 0 ? 'today' : silentDays === 1 ? 'yesterday' : `${silentDays} days ago`;
  return `${count}; the last one ${ago}`;
}

function inTimeWords(byWeek: DueAndDone['byWeek']): string {
  if (byWeek === null) return '';
  return byWeek.due === 0 ? ', none due yet' : `, ${byWeek.done} of the ${byWeek.due} due in their week`;
}
