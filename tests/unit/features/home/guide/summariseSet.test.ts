import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missingReasons, type MissingReason } from '#core/measurement/curve';
import type { LimitEnd } from '#core/measures/limitEnd';
import { findMeasure, measureIds, type MeasureId } from '#core/measures/measures';
import { defaultLimits, withLimit, type Limits } from '#core/protocol/limits';
import type { Verdict } from '#core/scoring/verdict';
import { summariseSet, type SummarisedRepetition } from '#features/home/guide/summariseSet';
import { kneeJudged } from '../../../../support/kneeJudgement';
import { unfit } from '../../../../support/unfitWords';

const at = (value: number) => ({ value, band: 2, ownBand: 1, sample: 3, timeMs: 120 });
const kneeAt = (verdict: Verdict, deg: number): SummarisedRepetition => ({
  ranges: { 'knee-angle': { min: at(Math.min(deg, 0)), max: at(Math.max(deg, 0)) } },
  judgement: kneeJudged({ verdict, direction: deg < 0 ? 'outward' : 'inward', worst: at(deg) }),
});
const inLine = kneeAt('in', 1);
const inward = kneeAt('out', 20);
const outward = kneeAt('out', -20);
const near = kneeAt('cant-tell', -9.8);
const unseen = (reason: MissingReason): SummarisedRepetition => ({
  ranges: {},
  judgement: kneeJudged({ verdict: 'not-measured', reason }),
});

/** The knee in line, another measure far out. */
const beside = (measure: MeasureId, end: LimitEnd): SummarisedRepetition => {
  const extreme = at(end === 'most' ? 50 : -50);
  const judged = { measure, verdict: 'out', chanceInLine: 0, reason: null, end, extreme } as const;
  return {
    ranges: { ...inLine.ranges, [measure]: { min: extreme, max: extreme } },
    judgement: {
      ...kneeJudged({ verdict: 'out' }),
      decidedBy: measure,
      measures: [...inLine.judgement.measures, judged],
    },
  };
};
const withOthers: Limits = { ...defaultLimits, 'trunk-lean': { most: 10 }, depth: { least: 0.08 } };
/** A limit of every measure at the end that goes up. */
const limitedAll = measureIds.reduce(
  (limits, id) => withLimit(limits, id, 'most', findMeasure(id).limits.most.first),
  defaultLimits,
);
const summary = (repetitions: readonly SummarisedRepetition[], prescribed: number | null) =>
  summariseSet(repetitions, defaultLimits, prescribed);

describe('summariseSet(repetitions, limits, prescribed)', () => {
  it('praises what stayed over the foot, and says what to practise', () => {
    expect(summary([inLine, inward, inLine, inLine, inward, outward], 6)).toEqual({
      well: 'In 3 of 6 repetitions your knee stayed over the foot.',
      practise:
        'In the second and the fifth repetition your knee went inward, towards the other knee. Guide it out a little, over the middle of the foot.',
      unmeasured: null,
      inLineShare: expect.closeTo(0.5, 6),
      faults: 3,
    });
  });

  it('says where it looks as if the other leg worked, whatever came out', () => {
    for (const one of [inLine, inward, outward, near]) {
      const told = summariseSet([one, one, one], defaultLimits, 3, true);
      expect(told.unmeasured).toMatch(/^It looks as if your other leg did the work;/);
      expect(summariseSet([one, one, one], defaultLimits, 3).unmeasured ?? '').not.toMatch(/other leg/);
    }
  });

  it('asks for more of the same where all went well', () => {
    expect(summary([inLine, inLine], 2)).toEqual({
      well: 'In both repetitions your knee stayed over the foot.',
      practise: 'Keep going like this: slow, and the knee over the middle of the foot.',
      unmeasured: null,
      inLineShare: expect.closeTo(1, 6),
      faults: 0,
    });
  });

  it('praises the doing where nothing stayed over the foot', () => {
    expect(summary([outward, outward, outward], 3)).toMatchObject({
      well: 'You did all 3 repetitions.',
      practise:
        'In all 3 repetitions your knee went outward, away from the other knee. Guide it in a little, over the middle of the foot.',
    });
    expect(summary([inward, inward], 5).well).toBe('You did 2 repetitions.');
  });

  it('says that it can’t be told where any number may have been in line, and finds no fault in that', () => {
    // 9.8 outward, give or take 2, leaves a chance of 57 % of having stayed within 10.
    expect(summary([near, near, near], 3)).toEqual({
      well: 'You did all 3 repetitions.',
      practise: 'Keep going like this: slow, and the knee over the middle of the foot.',
      unmeasured: 'In all 3 repetitions it was too close to tell.',
      inLineShare: null,
      faults: 0,
    });
  });

  it('gives about the number where some are too close to tell', () => {
    expect(summary([inLine, inLine, inLine, near, inward], 5)).toMatchObject({
      well: 'In about 4 of 5 repetitions your knee stayed over the foot.',
      practise: expect.stringMatching(/^In the fifth repetition your knee went inward/),
      unmeasured: null,
    });
  });

  it('takes no side where both are as frequent', () => {
    expect(summary([inward, outward], null).practise).toBe(
      'Your knee went sometimes inward, sometimes outward. Go slowly, and keep it over the middle of the foot.',
    );
  });

  it('names the repetitions only where they are few', () => {
    const practise = (repetitions: SummarisedRepetition[]) => summary(repetitions, null).practise;
    expect(practise([inLine, inward, inLine, inward, unseen('joint-unseen'), inward])).toMatch(
      /^In the second, the fourth and the sixth repetition your knee went inward/,
    );
    expect(practise([inward, inward, inward, inward, inLine])).toMatch(/^In 4 of 5 repetitions/);
    expect(practise([inward])).toMatch(/^In the one repetition that was measured/);
  });

  it('names what went off other than the knee, and what to do', () => {
    const leaning = beside('trunk-lean', 'most');
    expect(summariseSet([leaning, inLine, leaning], withOthers, 3)).toEqual({
      well: 'In 1 of 3 repetitions you stayed within every limit.',
      practise:
        'In the first and the third repetition your upper body leaned to the side. Breastbone over the belt buckle.',
      unmeasured: null,
      inLineShare: expect.closeTo(1 / 3, 6),
      faults: 2,
    });
    // The knee goes first where it went off as often.
    expect(summariseSet([beside('depth', 'least'), inward], withOthers, 2).practise).toMatch(
      /^In the second repetition .* inward/,
    );
  });

  it('is honest where nothing was measured, and says why and what to change', () => {
    const told = summary([unseen('view-turned'), unseen('view-turned'), unseen('joint-unseen')], 3);
    expect(told).toEqual({
      well: 'You did all 3 repetitions.',
      practise:
        'The camera could not see how your knee moved, so there is nothing to say about it this time.',
      unmeasured:
        '3 of 3 repetitions could not be measured: turned too far from the camera. Turn the body, or move the camera, until hips and feet face it squarely.',
      inLineShare: null,
      faults: null,
    });
  });

  it('counts only what was measured, and says what was not', () => {
    const told = summary([inLine, unseen('out-of-picture'), inLine], 3);
    expect(told.well).toBe('In both repetitions your knee stayed over the foot.');
    expect(told.unmeasured).toMatch(
      /^1 of 3 repetitions could not be measured: leg out of the picture\. Move/,
    );
  });

  it('says that nothing was seen where there is nothing', () => {
    expect(summary([], 6).practise).toMatch(/^No repetition was seen/);
  });

  it('speaks kindly and without degrees, whatever came out', () => {
    const reasons = missingReasons.filter((reason) => reason !== 'none');
    const any = fc.oneof(
      fc.constantFrom(inLine, inward, outward, near),
      fc.constantFrom(...measureIds).map((measure) => beside(measure, 'most')),
      fc.constantFrom(...reasons).map(unseen),
    );
    fc.assert(
      fc.property(
        fc.array(any, { maxLength: 12 }),
        fc.option(fc.integer({ min: 1, max: 12 })),
        (judged, asked) => {
          const { well, practise, unmeasured } = summariseSet(judged, limitedAll, asked);
          for (const text of [well, practise, unmeasured ?? 'None.']) {
            expect(text).toMatch(/^[A-Z0-9].*\.$/);
            expect(text).not.toMatch(unfit);
            expect(text).not.toMatch(/°|degree|angle|valgus|varus|injur/i);
          }
          const verdicts = judged.map(({ judgement }) => judgement.verdict);
          if (verdicts.includes('not-measured')) expect(unmeasured).not.toBeNull();
          if (well.includes('stayed over'))
            expect(verdicts.some((one) => /^in$|cant-tell/.test(one))).toBe(true);
        },
      ),
    );
  });
});
