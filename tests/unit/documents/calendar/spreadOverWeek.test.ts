import { describe, expect, it } from 'vitest';
import { spreadOverWeek } from '#documents/calendar/spreadOverWeek';

describe('spreadOverWeek(perWeek)', () => {
  it.each([
    [1, 'MO', ''],
    [2, 'MO TH', ''],
    [3, 'MO WE FR', ''],
    [4, 'MO TU TH SA', ''],
    [7, 'MO TU WE TH FR SA SU', ''],
    [9, 'MO TU WE TH FR SA SU', 'MO TH'],
    [14, 'MO TU WE TH FR SA SU', 'MO TU WE TH FR SA SU'],
  ])('spreads %i times over %s, and again %s', (perWeek, once, again) => {
    const spread = spreadOverWeek(perWeek);
    expect([spread.once.join(' '), spread.again.join(' ')]).toEqual([once, again]);
  });
});
