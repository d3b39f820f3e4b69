import { describe, expect, it } from 'vitest';
import { buildSetReport, mostFrequent, type JudgedRepetition } from '#features/sessions/rules/buildSetReport';
import { kneeJudged } from '../../../../support/kneeJudgement';

const extreme = { value: 8, band: 5, sample: 20, timeMs: 700 };
const judgement = kneeJudged({ verdict: 'in-line', worst: extreme, alignmentScorePct: 90 });
const kneeSeen = (measuredShare: number) => ({
  'knee-angle': { min: null, max: extreme, measuredShare, mainReason: null },
});

function repetition(change: Partial<JudgedRepetition> = {}): JudgedRepetition {
  return {
    number: 1,
    completeness: 'complete',
    loadedFrom: 10,
    loadedTo: 29,
    ranges: kneeSeen(1),
    judgement,
    ...change,
  };
}
const unmeasured = kneeJudged({ verdict: 'not-measured', reason: 'view-turned' });

describe('buildSetReport(repetitions)', () => {
  it('gives one mark per complete repetition and leaves partial and cut ones out', () => {
    const { marks } = buildSetReport([
      repetition({ completeness: 'cut-at-start' }),
      repetition({
        number: 2,
        judgement: kneeJudged({ verdict: 'out-of-line', direction: 'outward', worst: extreme }),
      }),
      repetition({ number: 3, completeness: 'partial' }),
      repetition({ number: 4, judgement: unmeasured }),
    ]);
    expect(marks).toEqual([
      { number: 2, verdict: 'out-of-line', direction: 'outward', measure: null },
      { number: 4, verdict: 'not-measured', direction: null, measure: null },
    ]);
  });

  it('weighs the alignment of each repetition by its measured time', () => {
    // 20 samples at 90 %, and half of 60 samples at 40 %: (20 * 90 + 30 * 40) / (20 + 30) = 60.
    const { alignmentPct } = buildSetReport([
      repetition(),
      repetition({
        loadedFrom: 100,
        loadedTo: 159,
        ranges: kneeSeen(0.5),
        judgement: { ...judgement, alignmentScorePct: 40 },
      }),
      repetition({ loadedFrom: 200, loadedTo: 259, ranges: kneeSeen(0.2), judgement: unmeasured }),
    ]);
    expect(alignmentPct).toBeCloseTo(60, 9);
  });

  it('has an alignment of 0 % where the knee was never within its limits', () => {
    expect(
      buildSetReport([repetition({ judgement: { ...judgement, alignmentScorePct: 0 } })]).alignmentPct,
    ).toBe(0);
  });

  it('has no alignment without a measured repetition, and gives the main reason', () => {
    const hidden = { ...unmeasured, reason: 'joint-unseen' } as const;
    const judged = [hidden, unmeasured, unmeasured].map((one) => repetition({ judgement: one }));
    expect(buildSetReport(judged)).toMatchObject({ alignmentPct: null, mainReason: 'view-turned' });
  });

  it('is empty without repetitions', () => {
    expect(buildSetReport([])).toEqual({ marks: [], alignmentPct: null, mainReason: null, peak: null });
  });
});

describe('mostFrequent(values)', () => {
  it('gives the first of the most frequent values, and null for none', () => {
    expect(mostFrequent(['b', 'a', 'a', 'b', 'c'])).toBe('b');
    expect(mostFrequent([])).toBeNull();
  });
});
