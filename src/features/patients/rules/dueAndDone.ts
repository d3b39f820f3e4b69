import type { PlanDocument } from '#documents/plan/planDocument';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { calendarDay } from './calendarDay';

/** How much of a plan was done. */
export interface DueAndDone {
  /** Sessions in which something was done. */
  done: number;
  /** Of them those without filming, as the patient says. */
  unfilmed: number;
  /** Sessions due since the plan was given; null where the plan leaves open how often. */
  due: number | null;
  /** Days, by the calendar, since anything was done; null where nothing was. */
  silentDays: number | null;
}

const dayMs = 24 * 3_600_000;
const weekDays = 7;

/**
 * What of a plan was due and done. Due is what its number a week comes to in the days since it was given, without the
 * part of a session that is still to come. Common practice, no source.
 */
export function dueAndDone(
  { id, createdAt, perWeek }: Pick<PlanDocument, 'id' | 'createdAt' | 'perWeek'>,
  sessions: readonly ListedSession[],
  nowMs: number,
): DueAndDone {
  const followed = sessions.filter(({ plan, sets }) => plan?.id === id && sets.length > 0);
  const days = Math.max(0, Math.floor((nowMs - Date.parse(createdAt)) / dayMs));
  const lastMs = Math.max(...followed.map(({ startedAt }) => Date.parse(startedAt)));
  return {
    done: followed.length,
    unfilmed: followed.filter(({ isUnfilmed }) => isUnfilmed).length,
    due: perWeek === null ? null : Math.floor((days * perWeek) / weekDays),
    silentDays: followed.length === 0 ? null : Math.max(0, calendarDay(nowMs) - calendarDay(lastMs)),
  };
}

/** '5 sessions done (1 without filming), 9 due so far; the last one 2 days ago'. */
export function dueWords({ done, unfilmed, due, silentDays }: DueAndDone): string {
  const without = unfilmed === 0 ? '' : ` (${unfilmed} without filming)`;
  const dueSoFar = due === null ? '' : `, ${due} due so far`;
  const count = `${done} ${done === 1 ? 'session' : 'sessions'} done${without}${dueSoFar}`;
  if (silentDays === null) return count;
  const ago = silentDays === 0 ? 'today' : silentDays === 1 ? 'yesterday' : `${silentDays} days ago`;
  return `${count}; the last one ${ago}`;
}
