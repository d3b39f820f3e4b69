import { sides } from '#core/protocol/side';
import { exerciseName } from '#words/exerciseWords';
import type { ExchangeDayAfter, ExchangeSession } from './exchangeRecord';
import {
  absent,
  category,
  ownBase,
  ownConcept,
  painConcept,
  patientReference,
  reference,
  type Resource,
} from './fhirCodes';

const questions = {
  'pain-before': 'Pain right before the session, 0 to 10; of the knee that hurt more, where both were asked',
  'pain-before-left': 'Pain of the left knee right before the session, 0 to 10',
  'pain-before-right': 'Pain of the right knee right before the session, 0 to 10',
  'pain-during': 'Pain during the set at its most, 0 to 10',
  'pain-after': 'Pain after all sets, 0 to 10; of the knee that hurt more, where both were asked',
  'pain-after-left': 'Pain of the left knee after all sets, 0 to 10',
  'pain-after-right': 'Pain of the right knee after all sets, 0 to 10',
  effort: 'Effort of the session, 0 to 10',
  'day-after-pain': 'Most pain in the day after the session, 0 to 10',
  'day-after-swelling': 'Swelling in the day after, against the time before',
} as const;
type Question = keyof typeof questions;

const swellingWords = {
  less: 'less swollen',
  same: 'not more swollen',
  more: 'more swollen',
  'much-more': 'much more swollen',
} as const;
const swellingConcept = (swelling: NonNullable<ExchangeDayAfter['swelling']>) =>
  ownConcept('swelling', swelling, swellingWords[swelling]);

/** What is asked, so that the answers' questionnaire is in the bundle too. In this program's own words. */
export const questionnaire: Resource = {
  resourceType: 'Questionnaire',
  id: 'session-answers',
  url: `${ownBase}/Questionnaire/session-answers`,
  title: 'What is asked before, during and after a session at home, and on the day after',
  status: 'active',
  subjectType: ['Patient'],
  item: [
    ...(['pain-before', 'pain-before-left', 'pain-before-right'] as const).map(asked),
    {
      linkId: 'set',
      text: 'Each set',
      type: 'group',
      repeats: true,
      item: [asked('pain-during')],
    },
    ...(['pain-after', 'pain-after-left', 'pain-after-right', 'effort', 'day-after-pain'] as const).map(
      asked,
    ),
    {
      linkId: 'day-after-swelling',
      text: questions['day-after-swelling'],
      type: 'choice',
      answerOption: (['less', 'same', 'more', 'much-more'] as const).map((swelling) => ({
        valueCoding: codingOf(swelling),
      })),
    },
  ],
};

function asked(question: Question) {
  return { linkId: question, text: questions[question], type: 'integer' };
}

function codingOf(swelling: keyof typeof swellingWords) {
  const [coding] = swellingConcept(swelling).coding;
  return { ...coding, display: swellingWords[swelling] };
}

/** What the person said of a session: each answer as an observation, and all of them as they were given. */
export function answersOf(session: ExchangeSession): Resource[] {
  const { painBefore, painAfter, painBySide, effort, dayAfter, startedAt, endedAt } = session;
  const ended = endedAt ?? startedAt;
  return [
    ...(painBefore === null ? [] : [painOf(session, 'pain-before', painBefore, startedAt)]),
    ...(painAfter === null ? [] : [painOf(session, 'pain-after', painAfter, ended)]),
    ...(painBySide === null
      ? []
      : sides.flatMap((side) => [
          painOf(session, `pain-before-${side}`, painBySide.before[side], startedAt, side),
          painOf(session, `pain-after-${side}`, painBySide.after[side], ended, side),
        ])),
    ...(effort === null
      ? []
      : [
          {
            ...answer(session, 'effort', ended),
            code: ownConcept('answer', 'effort', questions.effort),
            valueInteger: effort,
          },
        ]),
    ...(dayAfter === null
      ? []
      : [
          painOf(session, 'day-after-pain', dayAfter.worst, dayAfter.answeredAt),
          swellingOf(session, dayAfter),
        ]),
    ...responses(session),
  ];
}

function painOf(
  session: ExchangeSession,
  question: Question,
  score: number | null,
  at: string,
  side?: 'left' | 'right',
): Resource {
  const { painLimit } = session;
  return {
    ...answer(session, question, at),
    code: painConcept(questions[question]),
    ...(side === undefined ? {} : { bodySite: ownConcept('side', side, `${side} knee`) }),
    ...(score === null ? notAnswered : { valueInteger: score }),
    ...(painLimit === null
      ? {}
      : { referenceRange: [{ high: { value: painLimit }, text: 'limit agreed with the therapist' }] }),
  };
}

function swellingOf(session: ExchangeSession, { swelling, answeredAt }: ExchangeDayAfter): Resource {
  return {
    ...answer(session, 'day-after-swelling', answeredAt),
    code: ownConcept('answer', 'day-after-swelling', questions['day-after-swelling']),
    ...(swelling === null ? notAnswered : { valueCodeableConcept: swellingConcept(swelling) }),
  };
}

const notAnswered = { dataAbsentReason: absent('unknown', 'asked, and not answered') };

function answer({ id }: ExchangeSession, question: Question, at: string) {
  return {
    resourceType: 'Observation',
    id: `${id}-${question}`,
    partOf: [reference('Procedure', id)],
    status: 'final',
    category: category('survey'),
    subject: patientReference,
    effectiveDateTime: at,
  };
}

/** One of the session itself and one of the day after, each where something was answered. */
function responses(session: ExchangeSession): Resource[] {
  const { painBefore, painAfter, painBySide, effort, sets, dayAfter, startedAt, endedAt } = session;
  const bySide = (time: 'before' | 'after') =>
    sides.flatMap((side) => item(`pain-${time}-${side}`, painBySide?.[time][side] ?? null));
  const during = sets.flatMap(({ task, side, number, painDuring }) =>
    painDuring === null
      ? []
      : [
          {
            linkId: 'set',
            text: `${exerciseName(task)}, ${side}, set ${number}`,
            item: item('pain-during', painDuring),
          },
        ],
  );
  const said = [
    ...item('pain-before', painBefore),
    ...bySide('before'),
    ...during,
    ...item('pain-after', painAfter),
    ...bySide('after'),
    ...item('effort', effort),
  ];
  const later =
    dayAfter === null
      ? []
      : [
          ...item('day-after-pain', dayAfter.worst),
          ...(dayAfter.swelling === null
            ? []
            : [
                {
                  linkId: 'day-after-swelling',
                  text: questions['day-after-swelling'],
                  answer: [{ valueCoding: codingOf(dayAfter.swelling) }],
                },
              ]),
        ];
  return [
    ...(said.length === 0 ? [] : [response(session, 'answers', endedAt ?? startedAt, said)]),
    ...(later.length === 0 ? [] : [response(session, 'day-after', dayAfter!.answeredAt, later)]),
  ];
}

function item(question: Question, score: number | null) {
  if (score === null) return [];
  return [{ linkId: question, text: questions[question], answer: [{ valueInteger: score }] }];
}

function response({ id }: ExchangeSession, name: string, at: string, items: object[]): Resource {
  return {
    resourceType: 'QuestionnaireResponse',
    id: `${id}-${name}`,
    partOf: [reference('Procedure', id)],
    questionnaire: questionnaire['url'],
    status: 'completed',
    subject: patientReference,
    authored: at,
    author: patientReference,
    source: patientReference,
    item: items,
  };
}
