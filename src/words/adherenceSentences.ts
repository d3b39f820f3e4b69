import type { Adherence } from '#core/adherence/adherence';

/** Weeks that are listed one by one. */
const mostWeeks = 12;

/** How much of what was due was done, for the therapist; it scolds nobody. */
export function adherenceSentences({
  weeks,
  done,
  due,
  interval,
  silentDays,
  isSilent,
}: Adherence): string[] {
  const percent = (share: number) => Math.round(100 * share);
  const total =
    interval === null
      ? 'Nothing was due yet.'
      : `Done in the week when due: ${done} of ${due}, ${percent(interval.share)} % (${percent(interval.low)} to ${percent(interval.high)}).`;
  const byWeek = weeks.filter((week) => week.due > 0).map((week) => `${week.done} of ${week.due}`);
  const when = byWeek.length > mostWeeks ? `By week, the last ${mostWeeks}` : 'By week';
  return [
    ...(isSilent ? [`Silent for ${silentDays} days.`] : []),
    total,
    ...(byWeek.length > 1 ? [`${when}: ${byWeek.slice(-mostWeeks).join(', ')}.`] : []),
  ];
}
