import { locale } from './messages/message';

/** All in UTC: moments are moved by the reader's own zone first, so that a kept format never has an old one. */
const day = {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
} as const;
const fullDate = { ...day, weekday: 'long', month: 'long' } as const;
const clock = { hour: '2-digit', minute: '2-digit', timeZone: 'UTC' } as const;

const made = new Map<object, { locale: string; format: Intl.DateTimeFormat }>();
/** Making a format takes a hundred times as long as using it, and a page writes hundreds of days. */
function formatOf(options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const known = made.get(options);
  if (known?.locale === locale()) return known.format;
  const format = new Intl.DateTimeFormat(locale(), options);
  made.set(options, { locale: locale(), format });
  return format;
}

/** A moment as the reader's clocks show it, or a day of the calendar, both as if it were UTC. */
function local(iso: string): Date {
  const date = new Date(iso);
  return iso.includes('T') ? new Date(date.getTime() - date.getTimezoneOffset() * 60_000) : date;
}

/**
 * On which day: 'Sun 5 Apr 2026'.
 *
 * @param iso  ISO 8601: a moment, whose day is that of the reader's own time, or a day of the calendar
 */
export function dayWords(iso: string): string {
  return formatOf(day).format(local(iso)).replace(',', '');
}

/**
 * A day of the calendar in full: 'Sunday 5 April 2026'.
 *
 * @param date  ISO 8601, without a time
 */
export function dateInWords(date: string): string {
  return formatOf(fullDate).format(new Date(date)).replace(',', '');
}

/** At what time of day, in the reader's own time: '08:07'. */
export function clockWords(iso: string): string {
  return formatOf(clock).format(local(iso));
}

/** When, in the reader's own time: 'Sun 5 Apr 2026, 08:07'. */
export function momentWords(iso: string): string {
  return `${dayWords(iso)}, ${clockWords(iso)}`;
}

/** On which day, in the reader's own time, for tables and forms: '2026-04-05'. */
export function isoDay(iso: string): string {
  return local(iso).toISOString().slice(0, 10);
}
