import { describe, expect, it } from 'vitest';
import { mostFrequent, setResult, type JudgedRepetition } from '#features/sessions/rules/setResult';
import { ofKnee } from '../../../../support/kneeJudgement';

const judgement = {
  ...ofKnee('in-line'),
  reason: null,
  direction: 'inward',
  worst: null,
  alignmentScorePct: 90,
} as const;

function repetition(change: Partial<JudgedRepetition> = {}): JudgedRepetition {
  return {
    number: 1,
    completeness: 'complete',
    loadedFrom: 10,
    loadedTo: 29,
    measuredShare: 1,
    kneeAngleMaxDeg: { value: 8, band: 5, sample: 20, timeMs: 700 },
    judgement,
    ...change,
  };
}
const unmeasured = {
  ...ofKnee('not-measured'),
  reason: 'view-turned',
  direction: null,
  worst: null,
  alignmentScorePct: null,
} as const;

describe('setResult(repetitions)', () => {
  it('gives one mark a complete repetition and leaves partial and cut ones out', () => {
    const { marks } = setResult([
      repetition({ completeness: 'cut-at-start' }),
      repetition({ number: 2, judgement: { ...judgement, ...ofKnee('out-of-line'), direction: 'outward' } }),
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
    const { alignmentPct } = setResult([
      repetition(),
      repetition({
        loadedFrom: 100,
        loadedTo: 159,
        measuredShare: 0.5,
        judgement: { ...judgement, alignmentScorePct: 40 },
      }),
      repetition({ loadedFrom: 200, loadedTo: 259, measuredShare: 0.2, judgement: unmeasured }),
    ]);
    expect(alignmentPct).toBeCloseTo(60, 9);
  });

  it('has an alignment of 0 % where the knee was never within its limits', () => {
    expect(setResult([repetition({ judgement: { ...judgement, alignmentScorePct: 0 } })]).alignmentPct).toBe(
      0,
    );
  });

  it('has no alignment without a measured repetition, and tells the main reason', () => {
    const hidden = { ...unmeasured, reason: 'joint-unseen' } as const;
    const judged = [hidden, unmeasured, unmeasured].map((one) => repetition({ judgement: one }));
    expect(setResult(judged)).toMatchObject({ alignmentPct: null, mainReason: 'view-turned' });
  });

  it('is empty without repetitions', () => {
    expect(setResult([])).toEqual({ marks: [], alignmentPct: null, mainReason: null, peak: null });
  });
});

describe('mostFrequent(values)', () => {
  it('gives the first of those that come most often, and null for none', () => {
    expect(mostFrequent(['b', 'a', 'a', 'b', 'c'])).toBe('b');
    expect(mostFrequent([])).toBeNull();
  });
});
