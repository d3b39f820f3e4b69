import { dayWords } from './dateWords';

/** What a day is called, of which the number of days since any first one is known. */
export type DayName = (day: number) => string;

export const numberedDay: DayName = (day) => `Day ${day}`;

/** 'Fri 3 Apr 2026', of days since 1970. Noon, so that no time zone makes another day of it. */
export const datedDay: DayName = (day) => dayWords(new Date((day + 0.5) * 24 * 3_600_000).toISOString());
