import fc from 'fast-check';
import { assessmentIds, findAssessment } from '#core/assessments/assessments';
import { scoreTries } from '#core/assessments/scoreTries';
import { freeLegs, wornFootwear } from '#core/conditions/setConditions';
import { exerciseIds, findExercise } from '#core/exercises/exercises';
import { swellings } from '#core/programme/stageCourse';
import { feedbackModes } from '#core/protocol/feedback';
import { loadKinds, loadPlaces } from '#core/protocol/load';
import { sides } from '#core/protocol/side';
import { supports } from '#core/protocol/support';
import { signIds } from '#core/safety/signs';
import {
  handKinds,
  remarkKinds,
  sessionStates,
  type ExchangePlan,
  type ExchangeQuestionnaire,
  type ExchangeRecord,
  type ExchangeRestriction,
  type ExchangeSession,
  type ExchangeSet,
  type ExchangeTest,
} from '#documents/exchange/exchangeRecord';
import { bearings, onsets } from '#documents/patient/caseEntries';
import { logKinds } from '#documents/patient/logEntry';
import { painfulSides, painSites } from '#documents/patient/patientDocument';
import { endReasons } from '#documents/session/sessionDocument';

const moment = fc
  .date({ min: new Date('2026-01-01'), max: new Date('2027-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString());
const score = fc.integer({ min: 0, max: 10 });
const maybe = <Value>(values: fc.Arbitrary<Value>) => fc.option(values);
/** Text as somebody writes it; never empty. */
const text = fc.string({ minLength: 1, maxLength: 30 }).map((some) => `An invented remark ${some}.`);

const result = fc.record({
  recordedAt: moment,
  measuringVersion: fc.integer({ min: 1, max: 9 }),
  network: fc.constantFrom('BlazePose heavy, some weights', 'BlazePose lite, other weights'),
  bendsFilmed: fc.boolean(),
  limitsDeg: fc.record({
    least: fc.integer({ min: -40, max: -1 }),
    most: fc.integer({ min: 1, max: 40 }),
  }),
  hands: fc.array(
    fc.record({
      what: fc.constantFrom(...handKinds),
      said: fc.oneof(fc.constant(''), text),
      by: fc.constantFrom('', 'ab', 'physiotherapist'),
      at: moment,
    }),
    { maxLength: 3 },
  ),
  remarks: fc.array(
    fc.record({
      kind: fc.constantFrom(...remarkKinds),
      text,
      atMs: maybe(fc.double({ min: 0, max: 1e6, noNaN: true }).map((ms) => ms + 0)),
      by: fc.constantFrom('', 'ab'),
      at: maybe(moment),
    }),
    { maxLength: 2 },
  ),
  repetitions: fc.integer({ min: 0, max: 60 }),
  peak: maybe(
    fc.record({
      meanDeg: fc.double({ min: -40, max: 60, noNaN: true }).map((deg) => deg + 0),
      semDeg: fc.double({ min: 0.1, max: 9, noNaN: true }),
    }),
  ),
  inLine: maybe(
    fc.record({
      low: fc.integer({ min: 0, max: 60 }),
      high: fc.integer({ min: 0, max: 60 }),
      of: fc.integer({ min: 1, max: 60 }),
    }),
  ),
});

const heightCm = maybe(fc.integer({ min: 0, max: 1000 }).map((millimetres) => millimetres / 10));
const conditions = fc.record({
  stage: maybe(text),
  seatHeightCm: heightCm,
  stepHeightCm: heightCm,
  support: maybe(fc.constantFrom(...supports)),
  load: maybe(
    fc.oneof(
      fc.constant({ kind: 'none' as const }),
      fc.record({ kind: fc.constantFrom(...loadKinds), level: text, where: fc.constantFrom(...loadPlaces) }),
    ),
  ),
  footwear: maybe(fc.constantFrom(...wornFootwear)),
  freeLeg: maybe(fc.constantFrom(...freeLegs)),
  feedback: maybe(fc.constantFrom(...feedbackModes)),
  isTest: fc.boolean(),
});

const set: fc.Arbitrary<ExchangeSet> = fc
  .record({
    recordingId: maybe(fc.uuid()),
    item: fc.integer({ min: 0, max: 19 }),
    task: fc.constantFrom(...exerciseIds),
    side: fc.constantFrom(...sides),
    number: fc.integer({ min: 1, max: 20 }),
    prescribedRepetitions: maybe(fc.integer({ min: 1, max: 200 })),
    painDuring: maybe(score),
    cutShort: maybe(text),
    heldMs: maybe(fc.integer({ min: 0, max: 600_000 })),
    conditions: maybe(conditions),
    result: maybe(result),
  })
  .map((any) => (findExercise(any.task).kind === 'hold' ? { ...any, result: null } : any));

const bothKnees = fc.record({ left: maybe(score), right: maybe(score) });

const session: fc.Arbitrary<ExchangeSession> = fc.record({
  id: fc.uuid(),
  startedAt: moment,
  endedAt: maybe(moment),
  planId: maybe(fc.uuid()),
  state: fc.constantFrom(...sessionStates),
  endedBecause: maybe(fc.constantFrom(...endReasons)),
  signs: fc.uniqueArray(fc.constantFrom(...signIds), { maxLength: 3 }),
  reopened: maybe(fc.record({ by: text, at: moment })),
  settled: fc.array(
    fc.record({
      by: fc.constantFrom('professional' as const, 'therapist' as const),
      who: fc.constantFrom('AB', 'my doctor'),
      at: moment,
    }),
    { maxLength: 2 },
  ),
  painBefore: maybe(score),
  painAfter: maybe(score),
  painBySide: maybe(fc.record({ before: bothKnees, after: bothKnees })),
  painLimit: maybe(score),
  dayAfter: maybe(
    fc.record({ answeredAt: moment, worst: maybe(score), swelling: maybe(fc.constantFrom(...swellings)) }),
  ),
  effort: maybe(score),
  isUnfilmed: fc.boolean(),
  remark: fc.oneof(fc.constant(''), text),
  sets: fc.array(set, { maxLength: 4 }),
});

const plan: fc.Arbitrary<ExchangePlan> = fc.record({
  id: fc.uuid(),
  createdAt: moment,
  reviewDate: maybe(moment.map((at) => at.slice(0, 10))),
  perWeek: maybe(fc.integer({ min: 1, max: 14 })),
  items: fc.array(fc.record({ task: fc.constantFrom(...exerciseIds), dose: text }), {
    minLength: 1,
    maxLength: 3,
  }),
});

const test: fc.Arbitrary<ExchangeTest> = fc
  .record({
    id: fc.uuid(),
    at: moment,
    by: fc.constantFrom('ab', 'physiotherapist'),
    test: fc.constantFrom(...assessmentIds),
    asDone: fc.oneof(fc.constant(''), text),
    tries: fc
      .record({
        left: fc.array(fc.integer({ min: 0, max: 4 }), { maxLength: 3 }),
        right: fc.array(fc.integer({ min: 0, max: 4 }), { maxLength: 3 }),
      })
      .filter(({ left, right }) => left.length + right.length > 0),
    worstPain: maybe(score),
    remark: fc.oneof(fc.constant(''), text),
  })
  .map((any) => {
    const assessment = findAssessment(any.test);
    const { left, right } = any.tries;
    return { ...any, results: { left: scoreTries(assessment, left), right: scoreTries(assessment, right) } };
  });

const day = moment.map((at) => at.slice(0, 10));
const answer = fc.oneof(
  fc.record({ kind: fc.constant('whole' as const), value: fc.integer() }),
  fc.record({ kind: fc.constant('number' as const), value: fc.constantFrom(0, 3, 2.5, -7.25) }),
  fc.record({ kind: fc.constant('text' as const), value: text }),
  fc.record({ kind: fc.constant('yes-no' as const), value: fc.boolean() }),
  fc.record({ kind: fc.constant('date' as const), value: day }),
  fc.record({
    kind: fc.constant('choice' as const),
    system: maybe(fc.constant('https://example.org/choices')),
    code: fc.constantFrom('a', 'b-2'),
    display: fc.oneof(fc.constant(''), text),
    points: maybe(fc.integer({ min: 0, max: 4 })),
  }),
);
const questionnaire: fc.Arbitrary<ExchangeQuestionnaire> = fc.record({
  id: fc.uuid(),
  at: moment,
  by: fc.constantFrom('ab', 'cd'),
  on: day,
  of: fc.constantFrom(
    'own-activities',
    'https://example.org/q',
    'https://example.org/q|part',
    'urn:with space',
  ),
  version: maybe(fc.constantFrom('2', '2026-01')),
  title: text,
  answers: fc.array(
    fc.record({
      linkId: fc.constantFrom('one', '2.1'),
      question: fc.oneof(fc.constant(''), text),
      answers: fc.array(answer, { maxLength: 2 }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  score: maybe(fc.integer({ min: 0, max: 100 })),
});

const prescribed = {
  id: fc.uuid(),
  at: moment,
  by: fc.constantFrom('ab', 'cd'),
  side: fc.constantFrom(...sides),
  setBy: text,
  until: maybe(day),
};
const restriction: fc.Arbitrary<ExchangeRestriction> = fc.oneof(
  fc.record({ ...prescribed, kind: fc.constant('bend' as const), mostDeg: fc.integer({ min: 0, max: 120 }) }),
  fc.record({
    ...prescribed,
    kind: fc.constant('weight-bearing' as const),
    bearing: fc.constantFrom(...bearings),
  }),
  fc.record({ ...prescribed, kind: fc.constantFrom('open-chain' as const, 'load' as const) }),
);

const complaint = fc
  .record({
    painfulSide: maybe(fc.constantFrom(...painfulSides)),
    since: maybe(day),
    onset: maybe(fc.constantFrom(...onsets)),
    sites: fc.uniqueArray(fc.constantFrom(...painSites), { maxLength: 3 }),
  })
  .filter(({ painfulSide, since, onset, sites }) => Boolean(painfulSide ?? since ?? onset ?? sites[0]));

/** With a signature or, where the device could not sign, without. */
const logged = fc
  .record({
    id: fc.uuid(),
    at: moment,
    by: fc.constantFrom('', 'ab'),
    what: fc.constantFrom(...logKinds),
    about: text,
    after: fc.array(fc.uuid(), { maxLength: 2 }),
    isSigned: fc.boolean(),
  })
  .map(({ isSigned, ...entry }) => ({
    ...entry,
    key: isSigned ? 'an-invented-key' : '',
    signature: isSigned ? 'an-invented-signature' : '',
  }));

const anyWithoutActivities = fc.record({
  patient: fc.oneof(fc.constant(''), fc.constant('invented-heron')),
  at: moment,
  note: fc.oneof(fc.constant(''), text),
  report: maybe(
    fc.record({
      title: text,
      lines: fc.array(
        fc.record({
          head: fc.oneof(fc.constant(''), text),
          text: fc.oneof(text, fc.constantFrom('a < b & c > d', '&amp;lt; as it was typed', '“quoted”')),
        }),
        { maxLength: 3 },
      ),
    }),
  ),
  complaint: maybe(complaint),
  surgery: maybe(fc.record({ what: text, side: fc.constantFrom(...sides), on: day })),
  goals: fc.array(fc.record({ text, questionnaire: fc.constant(null) }), { maxLength: 1 }),
  restrictions: fc.oneof(fc.constant(''), text),
  prescribedRestrictions: fc.uniqueArray(restriction, { maxLength: 3, selector: ({ id }) => id }),
  plans: fc.array(plan, { maxLength: 2 }),
  sessions: fc.uniqueArray(session, { maxLength: 3, selector: ({ id }) => id }),
  tests: fc.uniqueArray(test, { maxLength: 3, selector: ({ id }) => id }),
  questionnaires: fc.uniqueArray(questionnaire, { maxLength: 3, selector: ({ id }) => id }),
  log: fc.array(logged, { maxLength: 3 }),
});

/** Records of invented patients. */
export const anyExchangeRecord: fc.Arbitrary<ExchangeRecord> = anyWithoutActivities.map((any) => {
  const activities = any.questionnaires
    .slice(0, 1)
    .flatMap(({ id, answers }) => answers.map((_, i) => ({ text: `An activity ${i}`, questionnaire: id })));
  return { ...any, goals: [...any.goals, ...activities] };
});
