import { describe, expect, it } from 'vitest';
import { dayWords, momentWords } from '#words/dateWords';

describe('dayWords(iso), momentWords(iso)', () => {
  // Without a time zone, it is the reader's own.
  const iso = new Date('2026-04-05T08:07:00').toISOString();

  it('say day and time in the reader’s own time, whatever the language of the browser', () => {
    expect(dayWords(iso)).toBe('Sun 5 Apr 2026');
    expect(momentWords(iso)).toBe('Sun 5 Apr 2026, 08:07');
  });
});
