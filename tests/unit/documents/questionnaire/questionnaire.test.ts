import { describe, expect, it } from 'vitest';
import { buildQuestionnaireResponse } from '#documents/questionnaire/buildQuestionnaireResponse';
import { parseQuestionnaire } from '#documents/questionnaire/parseQuestionnaire';
import { fhirFaults } from '../../../support/fhirFaults';

const ordinal = (valueDecimal: number) => [
  { url: 'http://hl7.org/fhir/StructureDefinition/ordinalValue', valueDecimal },
];
const coding = (code: string, points: number) => ({
  valueCoding: { system: 'urn:invented', code, display: `Answer ${code}`, extension: ordinal(points) },
});
const choice = (change = {}) => ({
  linkId: 'a',
  text: 'An invented question?',
  type: 'choice',
  answerOption: [coding('x', 0), coding('y', 4)],
  ...change,
});
const file = (item: unknown, change = {}) =>
  JSON.stringify({
    resourceType: 'Questionnaire',
    url: 'https://example.org/fhir/Questionnaire/invented',
    version: '2',
    title: 'Invented',
    status: 'active',
    item,
    ...change,
  });

describe('parseQuestionnaire(text)', () => {
  it('reads groups, shown lines and questions of each kind, in order', () => {
    const text = file([
      {
        linkId: 'g',
        type: 'group',
        text: 'Stairs',
        item: [{ linkId: 'd', type: 'display', text: 'This week:' }, choice()],
      },
      choice({ linkId: 'n', type: 'choice', answerOption: [{ valueInteger: 3 }, { valueString: 'never' }] }),
      ...['boolean', 'integer', 'decimal', 'date', 'text'].map((type) => ({
        linkId: type,
        type,
        prefix: '1.',
        text: type,
      })),
    ]);
    expect(fhirFaults(JSON.parse(text))).toEqual([]);
    const { questions, ...rest } = parseQuestionnaire(`\uFEFF${text}`);
    expect(rest).toEqual({
      url: 'https://example.org/fhir/Questionnaire/invented',
      version: '2',
      title: 'Invented',
      copyright: '',
    });
    expect(questions[0]).toEqual({
      linkId: 'a',
      heading: 'Stairs · This week:',
      asks: 'An invented question?',
      kind: 'choice',
      options: [
        { system: 'urn:invented', code: 'x', display: 'Answer x', points: 0 },
        { system: 'urn:invented', code: 'y', display: 'Answer y', points: 4 },
      ],
    });
    expect(questions[1]?.options).toEqual([
      { system: null, code: '3', display: '3', points: 3 },
      { system: null, code: 'never', display: 'never', points: null },
    ]);
    expect(questions.slice(2).map(({ kind, asks }) => `${kind} ${asks}`)).toEqual([
      'yes-no 1. boolean',
      'whole 1. integer',
      'number 1. decimal',
      'date 1. date',
      'text 1. text',
    ]);
  });

  const nested = (depth: number): object =>
    depth === 0 ? choice() : { linkId: `g${depth}`, type: 'group', item: [nested(depth - 1)] };
  it.each<[string, string, RegExp]>([
    ['not JSON', 'a name', /is no Questionnaire of FHIR R4/],
    ['another resource', '{"resourceType":"Patient"}', /is no Questionnaire/],
    ['without a url', file([choice()], { url: undefined }), /has no url/],
    ['nothing', file([]), /asks nothing/],
    ['lines alone', file([{ linkId: 'd', type: 'display', text: 'Hello' }]), /asks nothing/],
    ['one linkId twice', file([choice(), choice()]), /two questions with the linkId “a”/],
    ['an answer of another kind', file([choice({ type: 'attachment' })]), /of the kind “attachment”/],
    ['several answers', file([choice({ repeats: true })]), /for several answers/],
    ['a condition', file([choice({ enableWhen: [{}] })]), /only after certain answers/],
    [
      'a list elsewhere',
      file([choice({ answerOption: undefined, answerValueSet: 'urn:x' })]),
      /a list elsewhere/,
    ],
    ['no answers', file([choice({ answerOption: [] })]), /has no answers/],
    ['no code', file([choice({ answerOption: [{ valueCoding: { display: 'x' } }] })]), /without a code/],
    [
      'many answers',
      file([choice({ answerOption: Array(61).fill(coding('x', 0)) })]),
      /more than 60 answers/,
    ],
    [
      'many questions',
      file(Array.from({ length: 201 }, (_, i) => choice({ linkId: `${i}` }))),
      /more than 200 questions/,
    ],
    ['long words', file([choice({ text: 'x'.repeat(501) })]), /empty or too long \(questions\.0\.asks\)/],
    ['deep groups', file([nested(8)]), /more than 6 deep/],
    ['a large file', file([choice()], { copyright: 'x'.repeat(300_000) }), /larger than 300 kB/],
  ])('refuses %s with a sentence', (_case, text, sentence) => {
    expect(() => parseQuestionnaire(text)).toThrow(sentence);
    expect(() => parseQuestionnaire(text)).toThrow(/Choose another file, or ask whoever made it\.$/);
  });
});

describe('buildQuestionnaireResponse(record, pseudonym)', () => {
  it('is valid FHIR R4, with each kind of answer', () => {
    const response = buildQuestionnaireResponse(
      {
        ...{ id: '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66', at: '2026-04-03T08:00:00.000Z', by: 'AB' },
        ...{
          withdrawn: null,
          on: '2026-04-02',
          of: 'https://example.org/q',
          version: '2',
          title: 'Invented',
          score: null,
        },
        answers: [
          {
            linkId: 'a',
            question: 'Which?',
            answers: [{ kind: 'choice', system: null, code: 'x', display: 'X', points: 1 }],
          },
          { linkId: 'b', question: '', answers: [] },
          { linkId: 'c', question: 'How many?', answers: [{ kind: 'whole', value: 3 }] },
          { linkId: 'd', question: 'How much?', answers: [{ kind: 'number', value: 3 }] },
          { linkId: 'e', question: 'Is it?', answers: [{ kind: 'yes-no', value: false }] },
          { linkId: 'f', question: 'When?', answers: [{ kind: 'date', value: '2026-04-01' }] },
          { linkId: 'g', question: 'What?', answers: [{ kind: 'text', value: 'Stairs' }] },
        ],
      },
      'Blue Heron 7',
    );
    expect(fhirFaults(response)).toEqual([]);
    expect(response).toMatchObject({
      questionnaire: 'https://example.org/q|2',
      subject: { display: 'Blue Heron 7' },
      item: [
        { answer: [{ valueCoding: { code: 'x' } }] },
        { linkId: 'b' },
        { answer: [{ valueInteger: 3 }] },
        { answer: [{ valueDecimal: 3 }] },
        {},
        {},
        {},
      ],
    });
  });
});
