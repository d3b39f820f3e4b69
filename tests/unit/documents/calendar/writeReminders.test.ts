import ICAL from 'ical.js';
import { afterEach, describe, expect, it } from 'vitest';
import { weekdays } from '#documents/calendar/spreadOverWeek';
import { writeReminders, type Reminders } from '#documents/calendar/writeReminders';

const zoneBefore = process.env['TZ'];
afterEach(() => {
  if (zoneBefore === undefined) delete process.env['TZ'];
  else process.env['TZ'] = zoneBefore;
});

/** A Wednesday. */
const wednesday = '2026-05-06T12:00:00+02:00';

function written(change: Partial<Reminders> = {}, now = wednesday): string {
  process.env['TZ'] = 'Europe/Berlin';
  const reminders = {
    id: 'b7d4b0a5-2c55-4d6c-8a6e-3f1de2c86f14',
    title: 'Exercises',
    perWeek: 3,
    until: null,
  };
  return writeReminders({ ...reminders, at: { hour: 18, minute: 5 }, ...change }, new Date(now));
}

/** The events as an independent reader finds them. */
function eventsIn(text: string): ICAL.Event[] {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
}

/** The next times of an event. */
function timesOf(event: ICAL.Event, count: number): string[] {
  const iterator = event.iterator();
  return Array.from({ length: count }, () => iterator.next()?.toString() ?? 'none');
}

describe('writeReminders(reminders, now)', () => {
  it('writes the days of a week at a time on the wall, as another program reads them', () => {
    const [event, ...others] = eventsIn(written());
    expect(others).toEqual([]);
    expect(event!.summary).toBe('Exercises');
    expect(event!.startDate.zone.tzid).toBe('floating');
    // Wednesday, Friday, Monday, Wednesday.
    expect(timesOf(event!, 4)).toEqual([
      '2026-05-06T18:05:00',
      '2026-05-08T18:05:00',
      '2026-05-11T18:05:00',
      '2026-05-13T18:05:00',
    ]);
  });

  it('rings at the time, and says nothing but the title', () => {
    const event = eventsIn(written())[0]!.component;
    const alarm = event.getFirstSubcomponent('valarm')!;
    expect(alarm.getFirstPropertyValue('action')).toBe('DISPLAY');
    expect(alarm.getFirstPropertyValue('description')).toBe('Exercises');
    expect(String(alarm.getFirstPropertyValue('trigger'))).toBe('PT0S');
    expect(written()).not.toMatch(/knee|pain|squat|DESCRIPTION:(?!Exercises)/i);
  });

  it('begins with the first time that is still to come', () => {
    const first = (now: string, perWeek = 3) => timesOf(eventsIn(written({ perWeek }, now))[0]!, 1)[0];
    expect(first('2026-05-06T18:04:59+02:00')).toBe('2026-05-06T18:05:00');
    expect(first('2026-05-06T18:05:00+02:00')).toBe('2026-05-08T18:05:00');
    // Monday alone, on a Monday evening; and over the turn of a year.
    expect(first('2026-05-04T20:00:00+02:00', 1)).toBe('2026-05-11T18:05:00');
    expect(first('2026-12-30T20:00:00+01:00')).toBe('2027-01-01T18:05:00');
  });

  it('keeps its time of day where the clocks change', () => {
    const [event] = eventsIn(written({ perWeek: 7 }, '2026-10-24T12:00:00+02:00'));
    expect(timesOf(event!, 3)).toEqual(['2026-10-24T18:05:00', '2026-10-25T18:05:00', '2026-10-26T18:05:00']);
  });

  it.each(Array.from({ length: 14 }, (_, index) => index + 1))('rings %i times in a week', (perWeek) => {
    // From a Sunday evening on, so that a week begins with Monday.
    const events = eventsIn(written({ perWeek }, '2026-05-10T23:00:00+02:00'));
    const times = events.flatMap((event) => timesOf(event, 15)).filter((time) => time < '2026-05-18');
    expect(times).toHaveLength(perWeek);
    expect(new Set(times).size).toBe(perWeek);
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  });

  it('ends with the day on which the plan is reviewed, which may ring, and not where that is over', () => {
    const [event] = eventsIn(written({ until: '2026-05-11' }));
    expect(timesOf(event!, 4)).toEqual([
      '2026-05-06T18:05:00',
      '2026-05-08T18:05:00',
      '2026-05-11T18:05:00',
      'none',
    ]);
    expect(written({ until: '2026-05-05' })).not.toContain('UNTIL');
  });

  it('puts a second time of a day between morning and night', () => {
    const second = (hour: number) =>
      timesOf(eventsIn(written({ perWeek: 14, at: { hour, minute: 30 } }))[1]!, 1)[0]!.slice(11);
    expect(second(7)).toBe('15:30:00');
    expect(second(13)).toBe('21:30:00');
    expect(second(14)).toBe('06:30:00');
    expect(second(20)).toBe('12:30:00');
  });

  it('stamps when it was written, in UTC', () => {
    expect(written()).toContain('\r\nDTSTAMP:20260506T100000Z\r\n');
  });

  it('escapes and folds a title of any kind, so that it comes back as it was', () => {
    const title = `Stretch; bend, and rest \\ in the evening\nthen “Füße hoch” ${'🦶🏽 '.repeat(30)}`;
    const text = written({ title });
    expect(eventsIn(text)[0]!.summary).toBe(title);
    const lines = text.split('\r\n');
    expect(lines.pop()).toBe('');
    expect(lines.some((line) => line.startsWith(' '))).toBe(true);
    for (const line of lines) {
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(line).not.toMatch(/[\r\n]/);
      // A character that was cut in two would come back as U+FFFD.
      expect(Buffer.from(line).toString('utf8')).toBe(line);
    }
  });

  it('names days as the standard does', () => {
    expect(written({ perWeek: 7 })).toContain(`BYDAY=${weekdays.join(',')}\r\n`);
  });
});
