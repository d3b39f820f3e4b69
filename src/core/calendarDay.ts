const dayMs = 24 * 3_600_000;

/** Whole days from any first day, by the calendar where the device is: two times of one day have the same. */
export function calendarDay(at: string | number): number {
  const date = new Date(at);
  return Math.round(Date.UTC(date.getFullYear(), date.getMonth(), date.getDate()) / dayMs);
}

/**
 * The same for a day of the calendar, which is the same day everywhere.
 *
 * @param date  ISO 8601, without a time
 */
export function dayOfDate(date: string): number {
  return Math.round(Date.parse(date) / dayMs);
}
