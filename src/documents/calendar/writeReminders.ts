import { calendarText, escapedText } from './calendarText';
import { spreadOverWeek, weekdays, type Weekday } from './spreadOverWeek';

/** A time of day on the wall, wherever that is. */
export interface TimeOfDay {
  hour: number;
  minute: number;
}

export interface Reminders {
  /** Calendars put what has the same id in the place of what was there. */
  id: string;
  /** The whole of what is said: anybody who sees the calendar reads it. */
  title: string;
  /** 1 to 14. */
  perWeek: number;
  at: TimeOfDay;
  /** The last day, ISO 8601; null without an end. One that is over is left out. */
  until: string | null;
}

/** From one time of a day to the other, hours. */
const hoursBetween = 8;
/** From then on the second time of a day is the earlier one. */
const lastHourBeforeAnother = 13;

/** Reminders as a calendar file (RFC 5545), in local time without a zone, so that they hold where the person is. */
export function writeReminders(reminders: Reminders, now: Date): string {
  const { once, again } = spreadOverWeek(reminders.perWeek);
  return calendarText([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Overfoot//Reminders//EN',
    ...eventLines(reminders, reminders.id, once, reminders.at, now),
    ...(again.length === 0
      ? []
      : eventLines(reminders, `${reminders.id}-2`, again, otherTime(reminders.at), now)),
    'END:VCALENDAR',
  ]);
}

function eventLines(
  { title, until }: Reminders,
  uid: string,
  days: readonly Weekday[],
  at: TimeOfDay,
  now: Date,
): string[] {
  const first = firstDay(days, at, now);
  const isOpen = until !== null && until.replaceAll('-', '') >= first;
  const end = isOpen ? `;UNTIL=${until.replaceAll('-', '')}T235959` : '';
  return [
    'BEGIN:VEVENT',
    `UID:${uid}`,
    `DTSTAMP:${utcStamp(now)}`,
    `DTSTART:${first}T${twoDigits(at.hour)}${twoDigits(at.minute)}00`,
    'DURATION:PT30M',
    `RRULE:FREQ=WEEKLY;BYDAY=${days.join(',')}${end}`,
    `SUMMARY:${escapedText(title)}`,
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${escapedText(title)}`,
    'TRIGGER:PT0S',
    'END:VALARM',
    'END:VEVENT',
  ];
}

/** The first of these days on which the time is still to come, as '20260506'. */
function firstDay(days: readonly Weekday[], { hour, minute }: TimeOfDay, now: Date): string {
  for (let later = 0; ; later++) {
    const moment = new Date(now.getFullYear(), now.getMonth(), now.getDate() + later, hour, minute);
    const day = weekdays[(moment.getDay() + 6) % 7]!;
    if (moment > now && days.includes(day))
      return `${moment.getFullYear()}${twoDigits(moment.getMonth() + 1)}${twoDigits(moment.getDate())}`;
  }
}

function otherTime({ hour, minute }: TimeOfDay): TimeOfDay {
  return { hour: hour + (hour > lastHourBeforeAnother ? -hoursBetween : hoursBetween), minute };
}

function utcStamp(now: Date): string {
  return `${now.toISOString().slice(0, 19).replaceAll(/[-:]/g, '')}Z`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
