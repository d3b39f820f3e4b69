import { describe, expect, it } from 'vitest';
import type { QuestionnaireRecord } from '#documents/patient/caseEntries';
import type { QuestionnaireDefinition } from '#documents/questionnaire/questionnaire';
import {
  answersWords,
  questionnaireCourses,
  seriesSentences,
} from '#features/patients/rules/questionnaireCourse';
import { answersOf, questionnaireForms, scoreOf } from '#features/patients/rules/questionnaireForm';

const options = [0, 4].map((points) => ({
  system: null,
  code: `${points}`,
  display: `Answer ${points}`,
  points,
}));
const imported: QuestionnaireDefinition = {
  url: 'https://example.org/fhir/Questionnaire/invented',
  version: '1',
  title: 'Invented',
  copyright: '',
  questions: [
    { linkId: 'a', heading: '', asks: 'Which?', kind: 'choice', options },
    { linkId: 'b', heading: '', asks: 'Is it?', kind: 'yes-no', options: [] },
    { linkId: 'c', heading: '', asks: 'How much?', kind: 'number', options: [] },
    { linkId: 'd', heading: '', asks: 'When?', kind: 'date', options: [] },
    { linkId: 'e', heading: '', asks: 'What?', kind: 'text', options: [] },
  ],
};
const [pain, activities, change, theirs] = questionnaireForms([imported]);
const nobody = { answers: {}, names: {} };

describe('answersOf(form, typed)', () => {
  it('makes answers of each kind, and leaves open what was not answered', () => {
    const answers = { a: '1', b: 'yes', c: '1,5', d: '2026-04-01' };
    expect(answersOf(theirs!, { ...nobody, answers })).toEqual([
      { linkId: 'a', question: 'Which?', answers: [{ kind: 'choice', ...options[1] }] },
      { linkId: 'b', question: 'Is it?', answers: [{ kind: 'yes-no', value: true }] },
      { linkId: 'c', question: 'How much?', answers: [{ kind: 'number', value: 1.5 }] },
      { linkId: 'd', question: 'When?', answers: [{ kind: 'date', value: '2026-04-01' }] },
      { linkId: 'e', question: 'What?', answers: [] },
    ]);
  });

  it('asks about activities in the patient’s own words', () => {
    const names = { 'activity-1': 'Stairs' };
    expect(answersOf(activities!, { answers: { 'activity-1': '3' }, names })).toEqual([
      { linkId: 'activity-1', question: 'Stairs', answers: [{ kind: 'whole', value: 3 }] },
    ]);
    expect(answersOf(activities!, { answers: { 'activity-2': '3' }, names })).toMatch(/what Activity 2 is/);
  });

  it.each([
    [pain!, {}, 'Answer one question at least.'],
    [pain!, { now: '11' }, 'Write a whole number from 0 to 10: How much does the knee hurt now?'],
    [pain!, { now: '2.5' }, /whole number/],
    [change!, { change: '-4' }, /from -3 to 3/],
    [theirs!, { a: '7' }, /Choose one of the answers/],
    [theirs!, { c: 'much' }, 'Write a number: How much?'],
  ])('says what is wrong (%#)', (form, answers, sentence) => {
    expect(answersOf(form, { ...nobody, answers })).toMatch(sentence);
  });
});

const numbers = (...values: number[]) =>
  values.map((value, index) => ({
    linkId: `activity-${index + 1}`,
    question: ['Stairs', 'Running', 'Squatting'][index]!,
    answers: [{ kind: 'whole' as const, value }],
  }));

describe('scoreOf(url, answers)', () => {
  it('is a mean, a step, or none', () => {
    expect(scoreOf('own-activities', numbers(3, 4, 2))).toEqual({ score: 3, why: null });
    expect(scoreOf('global-change', numbers(-2)).score).toBe(-2);
    expect(scoreOf('numeric-pain', numbers(3, 4, 2))).toEqual({ score: null, why: null });
  });

  it('is made for an imported one only where its rule is known', () => {
    expect(scoreOf(imported.url, numbers(3))).toEqual({
      score: null,
      why: 'No score is known for this one.',
    });
    const answer = (points: number) => [{ kind: 'choice' as const, ...options[0]!, points }];
    const answers = [2, 2, 2, 2, 2, 2, 2, 1, 1, 1, 1].map((points, index) => ({
      ...{ linkId: `${index}`, question: '', answers: answer(points) },
    }));
    const url = 'https://example.org/Questionnaire/koos-pf';
    expect(scoreOf(url, answers).score).toBeCloseTo(59.09, 2);
    const few = answers.map((one, index) => (index < 5 ? one : { ...one, answers: [] }));
    expect(scoreOf(url, few)).toEqual({ score: null, why: 'No score: 6 answers are needed.' });
  });
});

const record = (on: string, answers: QuestionnaireRecord['answers'], change = {}): QuestionnaireRecord => ({
  ...{ id: on, at: `${on}T08:00:00.000Z`, by: 'AB', withdrawn: null, on },
  ...{ of: 'own-activities', version: null, title: 'Own activities, 0 to 10', answers },
  score: scoreOf('own-activities', answers).score,
  ...change,
});

describe('questionnaireCourses(records)', () => {
  const [first, last] = [record('2026-04-01', numbers(3, 4, 2)), record('2026-05-01', numbers(6, 7, 4))];

  it('tells a change beyond error with its source, whatever the order of entry', () => {
    const [course] = questionnaireCourses([last, first]);
    expect(course).toMatchObject({ of: 'own-activities', others: 0, records: [first, last] });
    expect(seriesSentences(course!.series[0]!)).toEqual([
      'Mean of the activities: 3 (Wednesday 1 April 2026, AB), then 5.7 (Friday 1 May 2026, AB): +2.7.',
      expect.stringMatching(/^Beyond error: more than 2 \(.*Stratford 1995/),
      expect.stringMatching(/^No size of change is published/),
    ]);
  });

  it('compares only what asked about the same, and leaves out what was taken out', () => {
    const other = record('2026-04-15', [{ ...numbers(5)[0]!, question: 'Gardening' }]);
    expect(questionnaireCourses([first, other, last])[0]).toMatchObject({
      others: 1,
      series: [{ points: [{ value: 3 }, { value: 17 / 3 }] }],
    });
    const withdrawn = { at: first.at, by: 'AB' };
    expect(questionnaireCourses([{ ...first, withdrawn }, last])[0]?.records).toEqual([last]);
  });

  it('has a series for each kind of pain, and none without a score', () => {
    const answer = (value: number) => [
      { linkId: 'now', question: 'Now?', answers: [{ kind: 'whole' as const, value }] },
    ];
    const of = 'numeric-pain';
    const [course] = questionnaireCourses([
      record('2026-04-01', answer(5), { of, score: null }),
      record('2026-04-08', answer(3), { of, score: null }),
    ]);
    expect(course!.series.map(({ points }) => points.length)).toEqual([2, 0, 0]);
    expect(seriesSentences(course!.series[0]!).slice(1)).toEqual([
      expect.stringMatching(/^Within error: more than 2.8/),
      expect.stringMatching(/^As large as people call important: from 1.16/),
    ]);
    expect(seriesSentences(course!.series[1]!)).toEqual([]);
    expect(
      questionnaireCourses([record('2026-04-01', answer(5), { of: 'urn:x', score: null })])[0]?.series,
    ).toEqual([]);
    expect(
      answersWords(record('2026-04-01', [...answer(5), { linkId: 'x', question: '', answers: [] }])),
    ).toBe('Now?: 5; x: not answered');
  });
});
