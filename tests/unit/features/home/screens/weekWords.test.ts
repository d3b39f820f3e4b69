import { describe, expect, it } from 'vitest';
import { weekWords } from '#features/home/screens/weekWords';

describe('weekWords(week)', () => {
  it.each([
    [0, 3, true, '3 times this week.'],
    [0, 1, true, 'Once this week.'],
    [1, 2, true, '1 of 3 times this week. Twice more.'],
    [2, 1, true, '2 of 3 times this week. Once more.'],
    [1, 4, true, '1 of 5 times this week. 4 times more.'],
    [3, 0, true, 'Done for this week.'],
    [5, 0, false, 'Done for this week.'],
    [1, null, false, null],
  ])('says of %i done and %j open (room: %j): %j', (done, open, hasRoom, words) => {
    expect(weekWords({ days: [], done, open, hasRoom })).toBe(words);
  });

  it('asks for no more than the week has room for', () => {
    expect(weekWords({ days: [], done: 1, open: 3, hasRoom: false })).toBe('1 of 4 times this week.');
  });

  it('does not count what was left out', () => {
    expect(weekWords({ days: [], done: 0, open: 3, hasRoom: false })).toBeNull();
  });
});
