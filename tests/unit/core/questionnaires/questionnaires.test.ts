import { describe, expect, it } from 'vitest';
import { builtInQuestionnaires, findBuiltIn } from '#core/questionnaires/builtIn';
import { scoreChange } from '#core/questionnaires/scoreChange';
import { findScoreRule, scoreByRule } from '#core/questionnaires/scoreRules';

describe('scoreByRule(rule, points)', () => {
  const rule = findScoreRule('https://example.org/fhir/Questionnaire/koos-pf|1.0');
  const points = (...given: (number | null)[]) => [...given, ...Array<null>(11 - given.length).fill(null)];
  // Worked by hand: 100 − 25 × 18/11, 100 − 25 × 15/9.
  it.each([
    ['sum 18 of 11', [2, 2, 2, 2, 2, 2, 2, 1, 1, 1, 1], 59.09],
    ['9 answered, sum 15', points(2, 2, 2, 2, 2, 2, 1, 1, 1), 58.33],
    ['6 answered', points(0, 0, 0, 4, 4, 4), 50],
    ['5 answered', points(1, 1, 1, 1, 1), 'too-few'],
    ['12 questions', Array<number>(12).fill(1), 'other-questions'],
    ['points of another kind', points(5, 1, 1, 1, 1, 1), 'other-points'],
    ['points between', points(0.5, 1, 1, 1, 1, 1), 'other-points'],
  ] as const)('%s', (_case, given, expected) => {
    const found = scoreByRule(rule, given);
    if (typeof expected === 'string') expect(found).toEqual({ score: null, fault: expected });
    else expect(found.score).toBeCloseTo(expected, 2);
  });

  it('knows no other', () => {
    expect(findScoreRule('https://example.org/fhir/Questionnaire/of-our-own')).toBeNull();
    expect(findScoreRule('')).toBeNull();
    expect(findScoreRule('urn:uuid:KOOS-PF')?.id).toBe('koos-pf');
    expect(scoreByRule(null, [1])).toEqual({ score: null, fault: 'no-rule' });
  });
});

describe('scoreChange(earlier, later, facts)', () => {
  const activities = findBuiltIn('own-activities')!;
  // Means of 3 4 2 and 6 7 4.
  it('tells 3.0 to 5.7 as beyond 2, and 3.0 to 5.0 not', () => {
    expect(scoreChange(3, 17 / 3, activities)).toMatchObject({ isBeyondError: true, isImportant: null });
    expect(scoreChange(3, 5, activities).isBeyondError).toBe(false);
  });

  it('has both words apart, and neither where nothing is published', () => {
    const pain = findBuiltIn('numeric-pain')!;
    expect([1, 2, 3].map((later) => scoreChange(0, later, pain))).toEqual([
      { difference: 1, isBeyondError: false, isImportant: false },
      { difference: 2, isBeyondError: false, isImportant: true },
      { difference: 3, isBeyondError: true, isImportant: true },
    ]);
    expect(scoreChange(3, -3, findBuiltIn('global-change')!)).toEqual({
      difference: -6,
      isBeyondError: null,
      isImportant: null,
    });
  });
});

describe('findBuiltIn(id)', () => {
  it('finds each, and its questions by an id of their own', () => {
    for (const { id, questions } of builtInQuestionnaires) {
      expect(findBuiltIn(id)?.id).toBe(id);
      expect(new Set(questions.map(({ linkId }) => linkId)).size).toBe(questions.length);
    }
    expect(findBuiltIn('of-our-own')).toBeNull();
  });
});
