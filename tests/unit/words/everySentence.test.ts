import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adherence, outcomes } from '#core/adherence/adherence';
import { assessmentChange } from '#core/assessments/assessmentChange';
import { assessments } from '#core/assessments/assessments';
import { balanceReach } from '#core/assessments/balanceReach';
import { riseTests, type RiseCount } from '#core/assessments/countRises';
import { effusionGrades } from '#core/assessments/effusion';
import { miniSquat } from '#core/assessments/miniSquat';
import { stepDownRating } from '#core/assessments/stepDownRating';
import { changeOfSets, courseOfTests } from '#core/change/changeOfSets';
import { limbSymmetry } from '#core/change/limbSymmetry';
import { painChange } from '#core/change/painChange';
import { placings, sideDifference } from '#core/change/sideDifference';
import { compareConditions } from '#core/conditions/compareConditions';
import { criteriaCards } from '#core/criteria/criteria';
import { handMeasures } from '#core/criteria/handMeasures';
import { exercises } from '#core/exercises/exercises';
import { nextStep } from '#core/programme/nextStep';
import { proposalKinds } from '#core/programme/proposal';
import { thresholdFacts } from '#core/programme/proposalThresholds';
import { propose } from '#core/programme/propose';
import { sides } from '#core/protocol/side';
import { builtInQuestionnaires } from '#core/questionnaires/builtIn';
import { eyeAgreement, eyeRepeat } from '#core/reliability/eyeAgreement';
import { ownError, repeatAgreement, repeatKinds } from '#core/reliability/ownError';
import { clinicianFlags } from '#core/safety/clinicianFlags';
import { verdicts } from '#core/scoring/verdict';
import { blandAltman } from '#core/statistics/blandAltman';
import { intraclassCorrelation } from '#core/statistics/intraclassCorrelation';
import { kappa } from '#core/statistics/kappa';
import { stateWords } from '#features/patients/rules/criteriaLines';
import { decisionSentence } from '#features/patients/rules/programmeWords';
import { adherenceSentences } from '#words/adherenceSentences';
import * as assessmentWords from '#words/assessmentSentences';
import * as changeWords from '#words/changeSentences';
import { conditionSentences } from '#words/conditionSentences';
import { nextStepSentence } from '#words/nextStepSentence';
import { proposalSentence } from '#words/proposalSentence';
import * as reliabilityWords from '#words/reliabilitySentences';
import { conditionsOf, unlike } from '../../support/setConditions';
import { anyCourse } from '../../support/stageCourses';

/** What no rule may say by itself: it shows its evidence, and the therapist decides. Parts of words count too. */
const promises = /ready|safe|cleared|normal|improved/i;
/** What a broken template leaves behind. */
const broken = /undefined|null|NaN|\[object|Infinity/;

const amount = fc.double({ min: 0, max: 60, noNaN: true });
const error = fc.double({ min: 0, max: 8, noNaN: true });
const count = fc.integer({ min: 0, max: 40 });
const anyConditions = fc.constantFrom({}, ...unlike, { footwear: null }).map((given) => conditionsOf(given));
const anySets = fc.array(
  fc.record({ day: count, value: fc.double({ min: -30, max: 40, noNaN: true }), conditions: anyConditions }),
  { minLength: 1, maxLength: 8 },
);
const anyLeg = fc.record({ deg: amount, yawSdDeg: error, otherSdDeg: error });
const anyRepeats = fc.array(fc.record({ first: amount, second: amount }), { maxLength: 12 });
const anyTable = fc
  .tuple(count, count, count, count)
  .filter((cells) => cells.some((cell) => cell > 0))
  .map(([a, b, c, d]) => [
    [a, b],
    [c, d],
  ]);
const anyStage = fc.constantFrom(
  ...exercises.flatMap(({ id, stages }) => stages.map((stage) => ({ exercise: id, stage: stage.id }))),
);

/** By the file in src/words that makes them: sentences of anything that the rules can meet. */
const span = fc.record({
  fromMs: fc.integer({ min: 0, max: 90_000 }),
  toMs: fc.integer({ min: 0, max: 90_000 }),
});
const anyRiseCount: fc.Arbitrary<RiseCount> = fc.oneof(
  fc.record({
    kind: fc.constant('counted' as const),
    value: fc.integer({ min: 0, max: 50 }),
    from: span,
    notCounted: fc.array(fc.integer({ min: 0, max: 90_000 }), { maxLength: 3 }),
    unseenOutside: fc.option(span),
  }),
  fc.record({ kind: fc.constant('not-seen' as const), span }),
  fc.record({ kind: fc.constant('too-short' as const), seconds: fc.integer({ min: 0, max: 29 }) }),
  fc.record({ kind: fc.constant('too-few' as const), rises: fc.integer({ min: 1, max: 4 }) }),
  fc.record({
    kind: fc.constantFrom(
      'none-complete' as const,
      'other-leg' as const,
      'cut-at-start' as const,
      'cut-at-end' as const,
    ),
  }),
);

const made: Record<string, fc.Arbitrary<string[]>> = {
  proposalSentence: anyCourse.map((course) =>
    propose(course).reasons.map((reason) => proposalSentence(reason)),
  ),
  nextStepSentence: fc
    .tuple(anyStage, fc.constantFrom(...proposalKinds), fc.option(count, { nil: undefined }))
    .map(([place, proposal, more]) => [
      nextStepSentence(
        nextStep({ proposal, reasons: [], ...(more === undefined ? {} : { repetitions: more }) }, place),
      ),
    ]),
  conditionSentences: fc
    .tuple(anyConditions, anyConditions)
    .map(([earlier, later]) => conditionSentences(compareConditions(earlier, later))),
  changeSentences: fc
    .record({
      earlier: anySets,
      later: anySets,
      sem: fc.double({ min: 0.1, max: 8, noNaN: true }),
      days: fc.array(fc.record({ left: anyLeg, right: anyLeg }), { minLength: 1, maxLength: 3 }),
      placing: fc.constantFrom(...placings),
      other: fc.double({ min: 0.1, max: 60, noNaN: true }),
      involved: fc.constantFrom(...sides),
      before: fc.boolean(),
      value: amount,
      amountSem: fc.option(error),
      pains: fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 1, maxLength: 7 }),
    })
    .map(({ earlier, later, sem, days, placing, other, involved, before, value, amountSem, pains }) => [
      changeWords.painSentence('Pain in the morning', painChange(pains, [pains[0]!])),
      ...changeWords.changeSentences(changeOfSets(earlier, later, sem)),
      ...changeWords.courseSentences(courseOfTests([...earlier, ...later], sem)),
      changeWords.sideSentence(sideDifference(days, placing)),
      changeWords.symmetrySentence(
        limbSymmetry({ value, sem: amountSem }, { value: other, sem: amountSem }),
        {
          involved,
          before,
          linePct: 90,
        },
      ),
    ]),
  reliabilitySentences: fc
    .record({
      repeats: anyRepeats,
      kind: fc.constantFrom(...repeatKinds),
      table: anyTable,
      judged: fc.array(
        fc.record({
          eye: fc.constantFrom('in' as const, 'out' as const),
          measured: fc.constantFrom(...verdicts),
        }),
        { maxLength: 30 },
      ),
    })
    .map(({ repeats, kind, table, judged }) => [
      ...reliabilityWords.eyeSentences(eyeAgreement(judged)),
      ...reliabilityWords.eyeTwiceSentences(
        eyeRepeat(
          judged.map(({ eye, measured }) => ({ first: eye, second: measured === 'in' ? 'in' : 'out' })),
        ),
      ),
      ...reliabilityWords.ownErrorSentences(ownError(repeats), kind),
      reliabilityWords.kappaSentence(kappa(table)),
      reliabilityWords.agreementSentence(
        blandAltman(
          repeats.map(({ first }) => first),
          repeats.map(({ second }) => second),
        ),
      ),
      reliabilityWords.iccSentence(intraclassCorrelation(table), 3.2),
      ...reliabilityWords.repeatSentences(repeatAgreement(repeats)),
    ]),
  assessmentSentences: fc
    .record({
      assessment: fc.constantFrom(...assessments),
      left: fc.option(fc.integer({ min: 0, max: 4 })),
      right: fc.option(fc.integer({ min: 0, max: 4 })),
      alike: fc.record({ rater: fc.boolean(), protocol: fc.boolean() }),
      sem: fc.option(error),
      seen: fc.record({
        armsUsed: fc.boolean(),
        trunkLeaned: fc.boolean(),
        pelvisLeftLevel: fc.boolean(),
        kneeInward: fc.constantFrom(
          'none' as const,
          'beyond-second-toe' as const,
          'beyond-inner-border' as const,
        ),
        unsteady: fc.boolean(),
      }),
      bends: fc.array(fc.option(fc.boolean()), { minLength: 5, maxLength: 5 }),
      grades: fc.tuple(fc.constantFrom(...effusionGrades), fc.constantFrom(...effusionGrades)),
      reach: fc.record({ front: amount, backInward: amount, backOutward: amount }),
      riseTest: fc.constantFrom(...riseTests),
      rises: anyRiseCount,
    })
    .map(({ assessment, left, right, alike, sem, seen, bends, grades, reach, riseTest, rises }) => [
      ...assessmentWords.riseCountSentences(riseTest, rises),
      ...assessmentWords.protocolSentences(assessment),
      ...assessmentWords.assessmentSentences(assessment, { left, right }),
      assessmentWords.assessmentChangeSentence(
        assessment,
        assessmentChange(assessment, left ?? 1, right ?? 3, alike, sem),
      ),
      assessmentWords.resultWords(assessment, left ?? 0),
      assessmentWords.stepDownSentence(stepDownRating(seen)),
      assessmentWords.stepDownSeenWords(seen),
      assessmentWords.classedResult(assessment, left ?? 0),
      assessmentWords.miniSquatSentence(miniSquat(bends)),
      ...assessmentWords.bendCountSentences({
        kind: 'counted',
        bends: bends.map((isInward, i) => ({
          startMs: 4000 * i,
          isInward,
          bendDeg: i === 2 ? null : 50 + i,
        })),
        inward: bends.includes(null) ? null : bends.filter(Boolean).length,
        found: miniSquat(bends),
        more: bends.filter((one) => one === null).length,
      }),
      assessmentWords.effusionSentence(...grades),
      assessmentWords.reachSentence(balanceReach(reach, 80)),
    ]),
  adherenceSentences: fc
    .record({
      occasions: fc.array(fc.record({ day: count, outcome: fc.constantFrom(...outcomes) }), {
        maxLength: 12,
      }),
      today: count,
      perWeek: fc.integer({ min: 1, max: 7 }),
      pauses: fc.array(fc.record({ from: count, to: fc.option(count) }), { maxLength: 2 }),
    })
    .map(({ occasions, today, perWeek, pauses }) =>
      adherenceSentences(adherence(occasions, { perWeek, today, pauses, startDay: 0 })),
    ),
};

describe('every sentence that the rules can say', () => {
  it.each(Object.entries(made))('of %s promises nothing and is whole', (_, sentences) => {
    let met = 0;
    fc.assert(
      fc.property(sentences, (said) => {
        met += said.length;
        for (const sentence of said) {
          expect(sentence).not.toMatch(promises);
          expect(sentence).not.toMatch(broken);
        }
      }),
      { numRuns: 500 },
    );
    expect(met).toBeGreaterThan(200);
  });

  it('is of a file that is tried here', () => {
    const rules = /#core\/(programme|conditions|change|reliability|assessments|adherence)\//;
    const files = readdirSync('src/words').filter(
      (name) => name.endsWith('.ts') && rules.test(readFileSync(`src/words/${name}`, 'utf8')),
    );
    expect(files.map((name) => name.replace('.ts', '')).sort()).toEqual(Object.keys(made).sort());
  });

  it('on a decision promises nothing beyond what the therapist wrote', () => {
    for (const proposal of proposalKinds)
      for (const answer of ['accepted', 'refused'] as const) {
        const sentence = decisionSentence({
          id: '',
          at: '2026-04-03T08:00:00.000Z',
          by: 'AB',
          planId: '',
          item: 0,
          task: 'lateral-step-down',
          proposal,
          repetitions: null,
          reasons: [],
          answer,
          why: answer === 'refused' ? 'Travels next week.' : '',
        });
        expect(sentence).not.toMatch(promises);
        expect(sentence).not.toMatch(broken);
      }
  });

  it('of the data of tests, stages and thresholds promises nothing', () => {
    const said = JSON.stringify([
      assessments,
      exercises.map(({ stages }) => stages),
      thresholdFacts,
      clinicianFlags,
      handMeasures,
      builtInQuestionnaires,
      criteriaCards,
      stateWords,
      changeWords.noImportantChange,
    ]);
    expect(said.length).toBeGreaterThan(10_000);
    expect(said).not.toMatch(promises);
  });

  it('would be noticed', () => {
    for (const sentence of ['Ready for stage 3.', 'unsafe', 'He is cleared.', 'abnormal', 'It has improved.'])
      expect(sentence).toMatch(promises);
  });
});
