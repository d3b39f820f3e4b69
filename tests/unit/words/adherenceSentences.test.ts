import { describe, expect, it } from 'vitest';
import { adherence } from '#core/adherence/adherence';
import { adherenceSentences } from '#words/adherenceSentences';

const said = (days: number[], today: number) =>
  adherenceSentences(
    adherence(
      days.map((day) => ({ day, outcome: 'done' as const })),
      { perWeek: 3, startDay: 0, today, pauses: [] },
    ),
  );

describe('adherenceSentences(adherence)', () => {
  it.each([
    [
      said([1, 3, 14, 16, 18], 21),
      ['Done in the week when due: 5 of 9, 56 % (27 to 81).', 'By week: 2 of 3, 0 of 3, 3 of 3.'],
    ],
    [
      said([2], 12),
      [
        'Silent for 9 days.',
        'Done in the week when due: 1 of 5, 20 % (4 to 62).',
        'By week: 1 of 3, 0 of 2.',
      ],
    ],
    [
      said([1, 93], 98),
      [
        'Done in the week when due: 2 of 42, 5 % (1 to 16).',
        'By week, the last 12: 0 of 3, 0 of 3, 0 of 3, 0 of 3, 0 of 3, 0 of 3, 0 of 3, 0 of 3, 0 of 3, 0 of 3, 0 of 3, 1 of 3.',
      ],
    ],
    [said([], 1), ['Nothing was due yet.']],
    [said([0, 2, 5], 7), ['Done in the week when due: 3 of 3, 100 % (44 to 100).']],
  ])('%j', (sentences, expected) => {
    expect(sentences).toEqual(expected);
  });
});
