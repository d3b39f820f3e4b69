import { afterEach, describe, expect, it } from 'vitest';
import { dayWords, momentWords } from '#words/dateWords';
import { saidIn } from '#words/messages/message';
import { spanish } from '#words/messages/spanish';

const zoneBefore = process.env['TZ'];
afterEach(() => {
  if (zoneBefore === undefined) delete process.env['TZ'];
  else process.env['TZ'] = zoneBefore;
});

describe('dayWords(iso), momentWords(iso)', () => {
  // Without a time zone, it is the reader's own.
  const iso = new Date('2026-04-05T08:07:00').toISOString();

  it('say day and time in the reader’s own time, whatever the language of the browser', () => {
    expect(dayWords(iso)).toBe('Sun 5 Apr 2026');
    expect(momentWords(iso)).toBe('Sun 5 Apr 2026, 08:07');
  });

  it.each(['America/Los_Angeles', 'UTC', 'Pacific/Kiritimati'])(
    'keeps a day of the calendar in %s',
    (zone) => {
      process.env['TZ'] = zone;
      expect(dayWords('2026-04-05')).toBe('Sun 5 Apr 2026');
    },
  );

  it('says a moment by the day it has where the reader is', () => {
    process.env['TZ'] = 'America/Los_Angeles';
    expect(dayWords('2026-04-05T02:00:00.000Z')).toBe('Sat 4 Apr 2026');
  });

  it('follow the language that is spoken, there and back', () => {
    expect(saidIn('es', spanish, () => dayWords(iso))).toBe('dom 5 abr 2026');
    expect(dayWords(iso)).toBe('Sun 5 Apr 2026');
  });
});
