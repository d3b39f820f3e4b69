/** Of the standard, from Monday. */
export const weekdays = ['MO', 'TU', 'WE', 'TH', 'FR', 'SA', 'SU'] as const;
export type Weekday = (typeof weekdays)[number];

/**
 * Days with as much time between them as a week allows, the first on Monday; more than seven times are a second time
 * on some days.
 *
 * @param perWeek  1 to 14
 */
export function spreadOverWeek(perWeek: number): { once: Weekday[]; again: Weekday[] } {
  const spread = (times: number) =>
    Array.from({ length: times }, (_, index) => weekdays[Math.floor((index * 7) / times)]!);
  return { once: spread(Math.min(perWeek, 7)), again: spread(Math.max(0, perWeek - 7)) };
}
