import { describe, expect, it } from 'vitest';
import { perWeekSentence } from '#documents/plan/perWeekSentence';

describe('perWeekSentence(plan)', () => {
  it.each([
    [1, 'Once a week.'],
    [2, 'Twice a week.'],
    [3, '3 times a week.'],
    [14, '14 times a week.'],
    [null, null],
  ])('says of %j: %j', (perWeek, words) => {
    expect(perWeekSentence({ perWeek })).toBe(words);
  });
});
