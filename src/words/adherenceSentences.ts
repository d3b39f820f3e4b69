import type { Adherence } from '#core/adherence/adherence';

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
  return [
    ...(isSilent ? [`Silent for ${silentDays} days.`] : []),
    total,
    ...(byWeek.length > 1 ? [`By week: ${byWeek.join(', ')}.`] : []),
  ];
}
