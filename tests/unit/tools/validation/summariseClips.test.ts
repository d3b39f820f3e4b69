import { describe, expect, it } from 'vitest';
import type { ComparedClip, RepetitionComparison } from '#tools/validation/compareClip';
import { summariseClips } from '#tools/validation/summariseClips';
import { comparedRepetition as compared } from './handMade';

function clip(repetitions: RepetitionComparison[], repsFound = repetitions.length): ComparedClip {
  return { yawReading: 'firm', repsTrue: repetitions.length, repsFound, repetitions };
}

describe('summarise(clips)', () => {
  it('gives mean absolute error, bias and largest error of the peaks', () => {
    // Errors 3, -1, -5: mean absolute 9 / 3 = 3, bias -3 / 3 = -1, largest 5.
    const { peakDeg } = summariseClips([
      clip([compared({ truePeakDeg: 7 }), compared({ truePeakDeg: 11 })]),
      clip([compared({ truePeakDeg: 15 })]),
    ]);
    expect(peakDeg).toEqual({ count: 3, meanAbsolute: 3, bias: -1, largest: 5 });
  });

  it('leaves repetitions without a number out of the errors and counts them', () => {
    const summary = summariseClips([
      clip([
        compared({ truePeakDeg: 8 }),
        compared({ measuredPeakDeg: null, reason: 'out-of-picture', verdict: 'not-measured' }),
        compared({ measuredPeakDeg: null, reason: 'not-found', verdict: 'not-measured' }),
      ]),
    ]);
    expect(summary.peakDeg).toEqual({ count: 1, meanAbsolute: 2, bias: 2, largest: 2 });
    expect([summary.notMeasured, summary.notFound]).toEqual([1, 1]);
    expect(summary.verdictAgreementPct).toBe(0); // No side is named.
  });

  it('counts a clip as right only where number and places agree', () => {
    const missed = compared({ measuredPeakDeg: null, reason: 'not-found', verdict: 'not-measured' });
    const summary = summariseClips([
      clip([compared({}), compared({})]),
      clip([compared({})], 2), // one too many
      clip([compared({}), missed], 2), // as many, but one of them in the wrong place
    ]);
    expect(summary.clipsCountedRight).toBe(1);
    expect([summary.repsTrue, summary.repsFound]).toEqual([5, 6]);
  });

  it('distinguishes verdicts that disagree from opposite ones', () => {
    const summary = summariseClips([
      clip([
        compared({}),
        compared({ verdict: 'in' }),
        compared({ verdict: 'in', trueVerdict: 'out' }),
        compared({ verdict: 'out', trueVerdict: 'out' }),
      ]),
    ]);
    expect(summary.verdictAgreementPct).toBe(50);
    expect(summary.verdictsOpposite).toBe(1);
  });

  it('says how many truths lie within the stated bands', () => {
    const summary = summariseClips([
      clip([
        compared({ bandDeg: 2, truePeakDeg: 12 }), // on the edge counts
        compared({ bandDeg: 2, truePeakDeg: 12.5 }),
        compared({ bandDeg: 3, truePeakDeg: 8 }),
        compared({ bandDeg: null, truePeakDeg: 40 }),
      ]),
    ]);
    expect(summary.withinBandPct).toBeCloseTo(200 / 3, 9);
    expect(summary.coverage).toBeCloseTo(2 / 3, 9);
    expect([summary.medianBandDeg, summary.medianHalfWidthDeg]).toEqual([2, 2]);
  });

  it('shares out who is decided among the true peaks clearly on one side, and who of them rightly', () => {
    const unmeasured = { measuredPeakDeg: null, chanceBeyond: null, verdict: 'not-measured' } as const;
    const { decidedShare, decidedRight } = summariseClips([
      clip([
        compared({ truePeakDeg: 14, chanceBeyond: 0.85 }), // out, rightly
        compared({ truePeakDeg: 6.9, chanceBeyond: 0.2 }), // in, just sure enough, rightly
        compared({ truePeakDeg: 13.1, chanceBeyond: 0.04 }), // in, wrongly
        compared({ truePeakDeg: 6, chanceBeyond: 0.79 }), // no side is told
      ]),
      clip([
        compared({ truePeakDeg: 3, reason: 'out-of-picture', ...unmeasured }),
        compared({ truePeakDeg: 17, reason: 'not-found', ...unmeasured }),
      ]),
      clip([
        // Not clearly on one side, whatever is told.
        compared({ truePeakDeg: 13, chanceBeyond: 0.99 }),
        compared({ truePeakDeg: 7, chanceBeyond: 0.99 }),
        compared({ truePeakDeg: 10, chanceBeyond: 0.5 }),
      ]),
    ]);
    // 3 of 6, and 2 of these 3.
    expect([decidedShare, decidedRight]).toEqual([0.5, 2 / 3]);
  });

  it('calls nothing right where nothing is decided', () => {
    const { decidedShare, decidedRight } = summariseClips([
      clip([compared({ truePeakDeg: 14, chanceBeyond: 0.6 })]),
    ]);
    expect([decidedShare, decidedRight]).toEqual([0, null]);
  });

  it('takes timing errors together and by event', () => {
    const summary = summariseClips([
      clip([
        compared({ timingErrorsS: { start: -0.3, end: 0.1 } }),
        compared({ timingErrorsS: { start: 0.1 } }),
      ]),
    ]);
    // (0.3 + 0.1 + 0.1) / 3
    expect(summary.timingMaeS).toBeCloseTo(0.5 / 3, 9);
    expect(summary.timingS.start!.bias).toBeCloseTo(-0.1, 9);
    expect(summary.timingS).not.toHaveProperty('top');
  });

  it('gives null, never NaN, where there is nothing', () => {
    const summary = summariseClips([]);
    expect(summary.peakDeg).toEqual({ count: 0, meanAbsolute: null, bias: null, largest: null });
    const { verdictAgreementPct, withinBandPct, timingMaeS } = summary;
    expect([verdictAgreementPct, withinBandPct, timingMaeS]).toEqual([null, null, null]);
    const { decidedShare, decidedRight, coverage, medianHalfWidthDeg } = summary;
    expect([decidedShare, decidedRight, coverage, medianHalfWidthDeg]).toEqual([null, null, null, null]);
  });
});
