import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missingReasons, type MissingReason } from '#core/measurement/curve';
import type { LimitEnd } from '#core/measures/limitEnd';
import { measureIds, type MeasureId } from '#core/measures/measures';
import { judgementOf } from '#core/scoring/judge';
import { summariseSet } from '#features/home/guide/summariseSet';
import { kneeJudged } from '../../../../support/kneeJudgement';
import { unfit } from '../../../../support/unfitWords';

const extreme = { value: 0.3, band: 0.01, sample: 3, timeMs: 120 };
const inLine = kneeJudged({ verdict: 'in-line', worst: extreme });
const inward = kneeJudged({ verdict: 'out-of-line', worst: extreme });
const outward = kneeJudged({ verdict: 'out-of-line', direction: 'outward', worst: extreme });
const near = kneeJudged({ verdict: 'near-limit', direction: 'outward', worst: extreme });
const unseen = (reason: MissingReason) => kneeJudged({ verdict: 'not-measured', reason });

/** The knee in line, another measure out. */
const beside = (measure: MeasureId, end: LimitEnd) => {
  const verdict = 'out-of-line' as const;
  return {
    ...inLine,
    verdict,
    decidedBy: measure,
    measures: [...inLine.measures, { measure, verdict, reason: null, end, extreme }],
  };
};

describe('summariseSet(judged, prescribed)', () => {
  it('praises what stayed over the foot, and says what to practise', () => {
    expect(summariseSet([inLine, inward, inLine, inLine, inward, outward], 6)).toEqual({
      well: 'In 3 of 6 repetitions your knee stayed over the foot.',
      practise:
        'In 2 of 6 repetitions your knee went inward, towards the other knee. Guide it out a little, over the middle of the foot.',
      unmeasured: null,
    });
  });

  it('asks for more of the same where all went well', () => {
    expect(summariseSet([inLine, inLine], 2)).toEqual({
      well: 'In all 2 repetitions your knee stayed over the foot.',
      practise: 'Keep going like this: slow, and the knee over the middle of the foot.',
      unmeasured: null,
    });
  });

  it('praises the doing where nothing stayed over the foot', () => {
    expect(summariseSet([outward, outward, outward], 3)).toMatchObject({
      well: 'You did all 3 repetitions.',
      practise:
        'In all 3 repetitions your knee went outward, away from the other knee. Guide it in a little, over the middle of the foot.',
    });
    expect(summariseSet([inward, inward], 5).well).toBe('You did 2 repetitions.');
  });

  it('names the edge where nothing went beyond it', () => {
    expect(summariseSet([inLine, near], null).practise).toBe(
      'In 1 of 2 repetitions your knee came close to the edge, outward, away from the other knee. Guide it in a little, over the middle of the foot.',
    );
  });

  it('takes no side where both are as frequent', () => {
    expect(summariseSet([inward, outward], null).practise).toBe(
      'Your knee went sometimes inward, sometimes outward. Go slowly, and keep it over the middle of the foot.',
    );
  });

  it('names what went off other than the knee, and what to do', () => {
    expect(summariseSet([beside('trunk-lean', 'most'), inLine, beside('trunk-lean', 'most')], 3)).toEqual({
      well: 'In all 3 repetitions your knee stayed over the foot.',
      practise: 'In 2 of 3 repetitions your upper body leaned to the side. Breastbone over the belt buckle.',
      unmeasured: null,
    });
    // The knee goes first where it went off as often.
    expect(summariseSet([beside('depth', 'least'), inward], 2).practise).toMatch(/^In 1 of 2 .* inward/);
  });

  it('is honest where nothing was measured, and says why and what to change', () => {
    const summary = summariseSet([unseen('view-turned'), unseen('view-turned'), unseen('joint-unseen')], 3);
    expect(summary).toEqual({
      well: 'You did all 3 repetitions.',
      practise:
        'The camera could not see how your knee moved, so there is nothing to say about it this time.',
      unmeasured:
        '3 of 3 repetitions could not be measured: turned too far from the camera. Turn the body, or move the camera, until hips and feet face it squarely.',
    });
  });

  it('counts only what was measured, and says what was not', () => {
    const summary = summariseSet([inLine, unseen('out-of-picture'), inLine], 3);
    expect(summary.well).toBe('In all 2 repetitions your knee stayed over the foot.');
    expect(summary.unmeasured).toMatch(
      /^1 of 3 repetitions could not be measured: leg out of the picture\. Move/,
    );
  });

  it('says that nothing was seen where there is nothing', () => {
    expect(summariseSet([], 6).practise).toMatch(/^No repetition was seen/);
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
          const { well, practise, unmeasured } = summariseSet(judged, asked);
          for (const text of [well, practise, unmeasured ?? 'None.']) {
            expect(text).toMatch(/^[A-Z0-9].*\.$/);
            expect(text).not.toMatch(unfit);
            expect(text).not.toMatch(/°|degree|angle|valgus|varus|injur/i);
          }
          const hasUnmeasured = judged.some(({ verdict }) => verdict === 'not-measured');
          expect(unmeasured !== null).toBe(hasUnmeasured);
          if (well.includes('stayed over')) {
            const hasKneeInLine = judged.some((one) => judgementOf(one, 'knee-angle').verdict === 'in-line');
            expect(hasKneeInLine).toBe(true);
          }
        },
      ),
    );
  });
});
