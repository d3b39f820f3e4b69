import { afterEach, describe, expect, it } from 'vitest';
import { weekOf } from '#features/home/rules/week';

const zoneBefore = process.env['TZ'];
afterEach(() => {
  if (zoneBefore === undefined) delete process.env['TZ'];
  else process.env['TZ'] = zoneBefore;
});

/** The rule reads local time; dates are given with their offset, so that each names one moment. */
function inZone(zone: string): void {
  process.env['TZ'] = zone;
}

/** A letter a day from Monday: done, open, or today in capitals. */
function drawn(doneAt: readonly string[], now: string, perWeek: number | null = null): string {
  return weekOf(doneAt, perWeek, new Date(now))
    .days.map(({ isDone, isToday }) => (isToday ? (isDone ? 'D' : 'O') : isDone ? 'd' : 'o'))
    .join('');
}

const daysOf = (now: string) => weekOf([], null, new Date(now)).days.map(({ date }) => date.getDate());

describe('weekOf(doneAt, perWeek, now)', () => {
  it('runs from Monday to Sunday around the day', () => {
    inZone('Europe/Berlin');
    // 6 May 2026 is a Wednesday.
    expect(
      drawn(['2026-05-04T09:00:00+02:00', '2026-05-06T07:00:00+02:00'], '2026-05-06T12:00:00+02:00'),
    ).toBe('doDoooo');
    expect(daysOf('2026-05-04T00:00:00+02:00')).toEqual([4, 5, 6, 7, 8, 9, 10]);
    expect(daysOf('2026-05-10T23:59:59+02:00')).toEqual([4, 5, 6, 7, 8, 9, 10]);
  });

  it('counts a session before midnight to the day before, by the clock on the wall', () => {
    inZone('Europe/Berlin');
    const before = '2026-05-05T23:59:59+02:00';
    const after = '2026-05-06T00:00:00+02:00';
    expect(drawn([before], '2026-05-06T00:10:00+02:00')).toBe('odOoooo');
    expect(drawn([after], '2026-05-06T00:10:00+02:00')).toBe('ooDoooo');
    // The same moments elsewhere: six hours earlier on the wall, so that both are on Tuesday.
    inZone('America/New_York');
    expect(drawn([after], '2026-05-06T00:10:00+02:00')).toBe('oDooooo');
  });

  it('leaves out Sunday night of the week before and Monday of the week after', () => {
    inZone('Europe/Berlin');
    const around = ['2026-05-03T23:59:00+02:00', '2026-05-11T00:00:00+02:00'];
    expect(drawn(around, '2026-05-06T12:00:00+02:00')).toBe('ooOoooo');
  });

  it.each([
    // Clocks go forward on Sunday 29 March 2026 and back on Sunday 25 October 2026.
    ['forward', '2026-03-29T23:30:00+02:00', '2026-03-28T23:30:00+01:00', [23, 24, 25, 26, 27, 28, 29]],
    ['back', '2026-10-25T23:30:00+01:00', '2026-10-24T23:30:00+02:00', [19, 20, 21, 22, 23, 24, 25]],
  ])('has seven different days where the clocks go %s', (_, sunday, saturday, dates) => {
    inZone('Europe/Berlin');
    expect(daysOf(sunday)).toEqual(dates);
    expect(drawn([saturday], sunday)).toBe('ooooodO');
    expect(drawn([sunday], sunday)).toBe('ooooooD');
  });

  it('has days where midnight does not exist on one of them', () => {
    // Clocks went from 24:00 to 01:00 at the start of Sunday 8 September 2024.
    inZone('America/Santiago');
    expect(daysOf('2024-09-08T12:00:00-03:00')).toEqual([2, 3, 4, 5, 6, 7, 8]);
    expect(drawn(['2024-09-07T23:30:00-04:00'], '2024-09-08T12:00:00-03:00')).toBe('ooooodO');
    expect(drawn(['2024-09-08T01:00:00-03:00'], '2024-09-08T12:00:00-03:00')).toBe('ooooooD');
  });

  it('goes on over the turn of a year, and past 29 February', () => {
    inZone('Europe/Berlin');
    // 1 January 2027 is a Friday.
    expect(daysOf('2027-01-01T08:00:00+01:00')).toEqual([28, 29, 30, 31, 1, 2, 3]);
    expect(drawn(['2026-12-31T23:00:00+01:00'], '2027-01-01T08:00:00+01:00')).toBe('ooodOoo');
    expect(daysOf('2028-03-01T08:00:00+01:00')).toEqual([28, 29, 1, 2, 3, 4, 5]);
  });

  describe('how many times', () => {
    const [monday, tuesday] = ['2026-05-04T09:00:00+02:00', '2026-05-05T09:00:00+02:00'];
    const evening = '2026-05-05T19:00:00+02:00';
    const wednesday = '2026-05-06T12:00:00+02:00';
    const counted = (doneAt: readonly string[], perWeek: number | null, now = wednesday) => {
      inZone('Europe/Berlin');
      const { done, open, hasRoom } = weekOf(doneAt, perWeek, new Date(now));
      return { done, open, hasRoom };
    };

    it('says nothing is open where the plan leaves it open', () => {
      expect(counted([monday], null)).toEqual({ done: 1, open: null, hasRoom: false });
    });

    it('takes two sessions of one day as one, where no day has two', () => {
      expect(counted([monday, tuesday, evening], 3)).toEqual({ done: 2, open: 1, hasRoom: true });
      expect(counted([monday, tuesday, evening], 8)).toEqual({ done: 3, open: 5, hasRoom: true });
    });

    it('opens nothing more than planned, however much was done', () => {
      expect(counted([monday, tuesday, wednesday], 2)).toEqual({ done: 3, open: 0, hasRoom: true });
    });

    it('has no room for three more on a Saturday, nor for one on a Sunday that is done', () => {
      expect(counted([monday], 4, '2026-05-09T12:00:00+02:00')).toEqual({ done: 1, open: 3, hasRoom: false });
      expect(counted([monday], 3, '2026-05-09T12:00:00+02:00')).toEqual({ done: 1, open: 2, hasRoom: true });
      const sunday = '2026-05-10T12:00:00+02:00';
      expect(counted([sunday], 2, sunday)).toEqual({ done: 1, open: 1, hasRoom: false });
    });
  });
});
