import { describe, expect, it } from 'vitest';
import { calendarDay, dayOfDate } from '#core/calendarDay';
import { pauseLack, pauseSentence, pausesInForce } from '#features/patients/rules/pauses';

const pause = {
  ...{ id: 'p', at: '2026-04-03T08:00:00.000Z', by: 'AB', withdrawn: null, changed: null },
  ...{ from: '2026-04-05', to: '2026-04-09' },
};
const later = { at: '2026-04-07T08:00:00.000Z', by: 'CD' };

describe('pausesInForce(pauses)', () => {
  it('has the days of the calendar, and none that was taken out', () => {
    const from = calendarDay(new Date(2026, 3, 5, 23, 30).getTime());
    expect(pausesInForce([pause, { ...pause, withdrawn: later }])).toEqual([{ from, to: from + 4 }]);
    expect(pausesInForce([{ ...pause, to: null }])).toEqual([{ from, to: null }]);
    expect(dayOfDate('1970-01-02')).toBe(1);
  });
});

describe('pauseSentence(pause)', () => {
  it.each([
    [{}, 'Sunday 5 April 2026 to Thursday 9 April 2026 (AB, Fri 3 Apr 2026).'],
    [{ to: null }, 'Sunday 5 April 2026 until further notice (AB, Fri 3 Apr 2026).'],
    [
      { to: '2026-04-05', changed: later },
      'Sunday 5 April 2026 (AB, Fri 3 Apr 2026; end changed by CD, Tue 7 Apr 2026).',
    ],
  ])('says when, and who (%#)', (change, sentence) => {
    expect(pauseSentence({ ...pause, ...change })).toBe(sentence);
  });
});

describe('pauseLack(from, to)', () => {
  it('wants a first day, and no end before it', () => {
    expect(pauseLack('', '')).toMatch(/first day/);
    expect(pauseLack('2026-04-05', '2026-04-04')).toMatch(/before the first/);
    expect([pauseLack('2026-04-05', ''), pauseLack('2026-04-05', '2026-04-05')]).toEqual([null, null]);
  });
});
