import { isSameDay } from './isSameDay';

/** One day of a week, in local time. */
export interface WeekDay {
  /** Local midnight at its start, or the first moment after it. */
  date: Date;
  isDone: boolean;
  isToday: boolean;
}

export interface Week {
  /** Monday to Sunday. */
  days: readonly WeekDay[];
  /** Times that count: on one day no more than the plan spreads over a day. */
  done: number;
  /** Times that are still open; null where the plan leaves open how many there are. */
  open: number | null;
  /** Whether the days that are left have room for what is open. */
  hasRoom: boolean;
}

/**
 * The week around a moment, and what was done in it.
 *
 * @param doneAt  when something was done, ISO 8601, in any order
 * @param perWeek  times a week, 1 to 14; null where the plan leaves it open
 */
export function weekOf(doneAt: readonly string[], perWeek: number | null, now: Date): Week {
  const sinceMonday = (now.getDay() + 6) % 7;
  const dates = Array.from({ length: 7 }, (_, day) => localDay(now, day - sinceMonday));
  const timesOf = (date: Date) => doneAt.filter((at) => isSameDay(new Date(at), date)).length;
  const days = dates.map((date) => ({ date, isDone: timesOf(date) > 0, isToday: isSameDay(date, now) }));
  const perDay = perWeek === null ? 1 : Math.ceil(perWeek / 7);
  const counted = dates.map((date) => Math.min(timesOf(date), perDay));
  const done = counted.reduce((sum, times) => sum + times, 0);
  const open = perWeek === null ? null : Math.max(0, perWeek - done);
  const room = counted.slice(sinceMonday).reduce((sum, times) => sum + perDay - times, 0);
  return { days, done, open, hasRoom: open !== null && open <= room };
}

/** The day that is so many days after that of a moment; a day may have 23 or 25 hours. */
function localDay(now: Date, later: number): Date {
  return new Date(now.getFullYear(), now.getMonth(), now.getDate() + later);
}
