import { max, range, sum } from 'd3-array';
import { shareInterval, type ShareInterval } from '../statistics/shareInterval';

/**
 * How an occasion ended.
 *
 * - `done`: all of it, or as much as worked
 * - `unfilmed`: the same, as the person says
 * - `stopped`: ended, or not begun, because the pain rule asked for it
 * - `held`: ended by a sign, or a knee that gave way or locked; nothing is due until there is a session again
 * - `given-up`: ended for another reason
 */
export const outcomes = ['done', 'unfilmed', 'stopped', 'held', 'given-up'] as const;
export type Outcome = (typeof outcomes)[number];

export interface Occasion {
  /** Whole days from any first day. */
  day: number;
  outcome: Outcome;
}

/** Days on which nothing is due, both ends included; null: until further notice. */
export interface Pause {
  from: number;
  to: number | null;
}

export interface PlanPeriod {
  /** On how many occasions a week it is done, 1 or more. */
  perWeek: number;
  startDay: number;
  today: number;
  /** As the therapist set them. */
  pauses: readonly Pause[];
}

export interface Adherence {
  /** From the plan's start, the running one last. Nobody does more than was due, in these figures. */
  weeks: { week: number; done: number; due: number }[];
  done: number;
  due: number;
  /** Null where nothing was due yet. */
  interval: ShareInterval | null;
  /** Days since the last occasion of any kind, or since the start, without pauses; today is not over and not counted. */
  silentDays: number;
  isSilent: boolean;
}

/** From so many days without anything, somebody should ask why. Our choice, no source: a week. */
export const usualSilentFrom = 7;

/**
 * How much of what was due was done, by week. Stopping because the rule asks for it is doing what was agreed.
 *
 * A week in which not all days count, such as the running one, has its part of the occasions due, rounded down.
 *
 * @param occasions  in any order
 * @throws  RangeError where perWeek is below 1
 * Source:  Wilson's interval; the rules are our choice, no source
 */
export function adherence(
  occasions: readonly Occasion[],
  { perWeek, startDay, today, pauses }: PlanPeriod,
  silentFrom = usualSilentFrom,
): Adherence {
  if (!(perWeek >= 1 && perWeek < Infinity))
    throw new RangeError(`A plan is done on 1 occasion a week or more, got ${perWeek}.`);
  const inTime = occasions.filter(({ day }) => day >= startDay && day <= today).sort((a, b) => a.day - b.day);
  const allPauses = [...pauses, ...pausesOfHolds(inTime)];
  const isDue = (day: number) =>
    day < today && !allPauses.some(({ from, to }) => day >= from && (to === null || day <= to));
  const doneDays = inTime.filter(({ outcome }) => outcome !== 'given-up').map(({ day }) => day);
  const weeks = range(Math.max(0, Math.ceil((today + 1 - startDay) / 7))).map((week) => {
    const days = range(startDay + 7 * week, startDay + 7 * week + 7);
    const due = Math.floor((perWeek * days.filter(isDue).length) / 7);
    return { week, done: Math.min(due, doneDays.filter((day) => days.includes(day)).length), due };
  });
  const [done, due] = [sum(weeks, (week) => week.done), sum(weeks, (week) => week.due)];
  const lastDay = max(inTime, ({ day }) => day) ?? startDay - 1;
  const silentDays = range(lastDay + 1, today).filter(isDue).length;
  return {
    weeks,
    done,
    due,
    interval: shareInterval(done, due),
    silentDays,
    isSilent: silentDays >= silentFrom,
  };
}

/** From the day after a session to hold, until the day before the next. */
function pausesOfHolds(occasions: readonly Occasion[]): Pause[] {
  return occasions.flatMap(({ day, outcome }, i) => {
    if (outcome !== 'held') return [];
    const next = occasions[i + 1];
    return [{ from: day + 1, to: next === undefined ? null : next.day - 1 }];
  });
}
