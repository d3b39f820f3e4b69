import { locale } from './messages/message';

/**
 * On which day: 'Sun 5 Apr 2026'.
 *
 * @param iso  ISO 8601: a moment, whose day is that of the reader's own time, or a day of the calendar
 */
export function dayWords(iso: string): string {
  const day = { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' } as const;
  const zone = iso.includes('T') ? {} : { timeZone: 'UTC' }; // As `new Date` reads a day without a time.
  return new Intl.DateTimeFormat(locale(), { ...day, ...zone }).format(new Date(iso)).replace(',', '');
}

/**
 * A day of the calendar in full: 'Sunday 5 April 2026'.
 *
 * @param date  ISO 8601, without a time
 */
export function dateInWords(date: string): string {
  const full = { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' } as const;
  return new Intl.DateTimeFormat(locale(), full).format(new Date(date)).replace(',', '');
}

/** At what time of day, in the reader's own time: '08:07'. */
export function clockWords(iso: string): string {
  return new Intl.DateTimeFormat(locale(), { hour: '2-digit', minute: '2-digit' }).format(new Date(iso));
}

/** When, in the reader's own time: 'Sun 5 Apr 2026, 08:07'. */
export function momentWords(iso: string): string {
  return `${dayWords(iso)}, ${clockWords(iso)}`;
}

/** On which day, in the reader's own time, for tables and forms: '2026-04-05'. */
export function isoDay(iso: string): string {
  const date = new Date(iso);
  return new Date(date.getTime() - date.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}
