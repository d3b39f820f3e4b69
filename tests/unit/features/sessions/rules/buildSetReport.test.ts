import { describe, expect, it } from 'vitest';
import { defaultLimits } from '#core/protocol/limits';
import { buildSetReport, mostFrequent, type JudgedRepetition } from '#features/sessions/rules/buildSetReport';
import { kneeJudged } from '../../../../support/kneeJudgement';

const extreme = { value: 8, band: 5, sample: 20, timeMs: 700 };
const judgement = kneeJudged({ verdict: 'in', worst: extreme, alignmentScorePct: 90 });
const kneeSeen = (measuredShare: number) => ({
  'knee-angle': { min: null, max: extreme, measuredShare, mainReason: null },
});

function repetition(change: Partial<JudgedRepetition> = {}): JudgedRepetition {
  return {
    number: 1,
    completeness: 'complete',
    ranges: kneeSeen(1),
    judgement,
    ...change,
  };
}
const unmeasured = kneeJudged({ verdict: 'not-measured', reason: 'view-turned' });

describe('buildSetReport(repetitions, limits)', () => {
  it('gives one mark per complete repetition and leaves partial and cut ones out', () => {
    const { marks } = buildSetReport(
      [
        repetition({ completeness: 'cut-at-start' }),
        repetition({
          number: 2,
          judgement: kneeJudged({ verdict: 'out', direction: 'outward', worst: extreme }),
        }),
        repetition({ number: 3, completeness: 'partial' }),
        repetition({ number: 4, judgement: unmeasured }),
      ],
      defaultLimits,
    );
    expect(marks).toEqual([
      { number: 2, verdict: 'out', direction: 'outward', measure: null },
      { number: 4, verdict: 'not-measured', direction: null, measure: null },
    ]);
  });

  it('counts how many were in line, those that could not be measured left out', () => {
    // Phi(2 / (2.5 / 1.645)) = Phi(1.316) = .906 for 8 degrees, give or take 2.5, at a limit of 10.
    const seen = { ...extreme, band: 2.5, ownBand: 2.5 };
    const judged = kneeJudged({ verdict: 'probably-in', worst: seen });
    const ranges = { 'knee-angle': { min: null, max: seen, measuredShare: 1, mainReason: null } };
    const one = repetition({ ranges, judgement: judged });
    const { inLine } = buildSetReport([one, repetition({ judgement: unmeasured }), one], defaultLimits);
    expect(inLine!.chancesInLine).toEqual([expect.closeTo(0.906, 3), expect.closeTo(0.906, 3)]);
    expect(inLine!.countChances[2]).toBeCloseTo(0.906 ** 2, 3);
  });

  it('has no count without a measured repetition, and gives the main reason', () => {
    const hidden = { ...unmeasured, reason: 'joint-unseen' } as const;
    const judged = [hidden, unmeasured, unmeasured].map((one) => repetition({ judgement: one }));
    expect(buildSetReport(judged, defaultLimits)).toMatchObject({ inLine: null, mainReason: 'view-turned' });
  });

  it('is empty without repetitions', () => {
    expect(buildSetReport([], defaultLimits)).toEqual({
      marks: [],
      inLine: null,
      mainReason: null,
      peak: null,
    });
  });
});

describe('mostFrequent(values)', () => {
  it('gives the first of the most frequent values, and null for none', () => {
    expect(mostFrequent(['b', 'a', 'a', 'b', 'c'])).toBe('b');
    expect(mostFrequent([])).toBeNull();
  });
});
