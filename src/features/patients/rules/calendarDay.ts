/** Whole days from any first day, by the calendar where the device is: two times of one day have the same. */
export function calendarDay(at: string | number): number {
  const date = new Date(at);
  return Math.round(Date.UTC(date.getFullYear(), date.getMonth(), date.getDate()) / (24 * 3_600_000));
}
