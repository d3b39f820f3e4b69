import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missingReasons, reasonCode } from '#core/measurement/curve';
import type { MeasuredRepetition } from '#core/measurement/measurement';
import type { MeasureRange } from '#core/measurement/measureRange';
import { kneeAngle } from '#core/measures/kneeAngle';
import { mapMeasures } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import { kneeDirection } from '#core/scoring/deciding';
import { judge, judgementOf } from '#core/scoring/judge';
import { leastMeasuredShare, verdictOf } from '#core/scoring/verdict';
import { kneeJudged, rangesWith } from '../../../support/kneeJudgement';

const limits: Limits = { 'knee-angle': { least: -7, most: 10 } };
const kneeLimits = (inwardDeg: number, outwardDeg: number): Limits => ({
  'knee-angle': { least: -outwardDeg, most: inwardDeg },
});
const noEvents = {
  startMs: 0,
  seatOffMs: null,
  topMs: null,
  topEndMs: null,
  bottomMs: null,
  seatContactMs: null,
  endMs: 900,
};

/** A repetition over a whole curve; null = missing as out of the picture. */
function repetitionOver(degs: (number | null)[], change: Partial<MeasureRange> = {}, band = 2) {
  const curve = {
    values: Float64Array.from(degs, (deg) => deg ?? 0),
    missing: Uint8Array.from(degs, (deg) => (deg === null ? reasonCode('out-of-picture') : 0)),
  };
  const seen = degs.flatMap((value, sample) =>
    value === null ? [] : [{ value, sample, timeMs: 30 * sample, band }],
  );
  const repetition: MeasuredRepetition = {
    number: 1,
    completeness: 'complete',
    events: noEvents,
    loadedFrom: 0,
    loadedTo: degs.length - 1,
    ranges: rangesWith({
      'knee-angle': {
        max: seen.reduce<(typeof seen)[0] | null>((a, b) => (a && a.value >= b.value ? a : b), null),
        min: seen.reduce<(typeof seen)[0] | null>((a, b) => (a && a.value <= b.value ? a : b), null),
        measuredShare: seen.length / degs.length,
        mainReason: seen.length < degs.length ? 'out-of-picture' : null,
        ...change,
      },
    }),
  };
  return [repetition, { curves: mapMeasures(() => curve) }] as const;
}

describe('verdictOf(excessDeg, bandDeg)', () => {
  it.each([
    // The whole band 3 to either side is within the limit up to -3, beyond it from above 3.
    [-3.001, 3, 'in-line'],
    [-3, 3, 'in-line'],
    [-2.999, 3, 'near-limit'],
    [0, 3, 'near-limit'],
    [3, 3, 'near-limit'],
    [3.001, 3, 'out-of-line'],
    [3.001, 4, 'near-limit'],
    [-0.001, 0, 'in-line'],
    [0, 0, 'in-line'],
    [0.001, 0, 'out-of-line'],
  ] as const)(
    'says that %d degrees beyond the limit, give or take %d, are %s',
    (excessDeg, bandDeg, verdict) => {
      expect(verdictOf(excessDeg, bandDeg)).toBe(verdict);
    },
  );
});

describe('judge(repetition, measurement, limits)', () => {
  it.each([
    // Limit 10 inward, band 2: in line up to 8, out of line above 12.
    [8, 'in-line'],
    [8.01, 'near-limit'],
    [12, 'near-limit'],
    [12.01, 'out-of-line'],
  ])('judges an inward peak of %d degrees as %s', (peakDeg, verdict) => {
    const judgement = judge(...repetitionOver([0, peakDeg, 1]), limits);
    expect(judgement).toMatchObject({ verdict, reason: null });
    expect(kneeDirection(judgement)).toBe('inward');
    expect(judgementOf(judgement, 'knee-angle').extreme).toEqual({
      value: peakDeg,
      sample: 1,
      timeMs: 30,
      band: 2,
    });
  });

  it.each([
    // Limit 7 outward, band 2: in line up to 5, out of line above 9.
    [-5, 'in-line'],
    [-5.01, 'near-limit'],
    [-9, 'near-limit'],
    [-9.01, 'out-of-line'],
  ])('judges an outward peak of %d degrees as %s', (peakDeg, verdict) => {
    const judgement = judge(...repetitionOver([0, 1, peakDeg]), limits);
    expect(judgement.verdict).toBe(verdict);
    expect(kneeDirection(judgement)).toBe('outward');
    expect(judgementOf(judgement, 'knee-angle').extreme).toEqual({
      value: peakDeg,
      sample: 2,
      timeMs: 60,
      band: 2,
    });
  });

  it('goes by the way in which the knee comes closest to its limit, not by the larger angle', () => {
    // 6 inward is 4 within its limit of 10; 5.5 outward is 1.5 within its limit of 7.
    const judgement = judge(...repetitionOver([6, -5.5]), limits);
    expect(judgement.verdict).toBe('near-limit');
    expect(kneeDirection(judgement)).toBe('outward');
  });

  it('judges a knee that is exactly in line all the time', () => {
    expect(judge(...repetitionOver([0, 0, 0]), limits)).toMatchObject({
      verdict: 'in-line',
      alignmentScorePct: 100,
    });
  });

  it('scores the share of measured loaded time within the limits, both limits included', () => {
    // Measured: 10, 10.5, -7, -7.5, 3, 2, 12 and 4; within: 10, -7, 3, 2 and 4. 5 of 8 = 62.5 %.
    const degs = [10, 10.5, null, -7, -7.5, 3, null, 2, 12, 4];
    expect(judge(...repetitionOver(degs), limits).alignmentScorePct).toBe(62.5);
  });

  it('scores loaded time only', () => {
    const [repetition, curves] = repetitionOver([40, 3, 11, 4, 40]);
    const loaded = { ...repetition, loadedFrom: 1, loadedTo: 3 };
    expect(judge(loaded, curves, limits).alignmentScorePct).toBeCloseTo((100 * 2) / 3, 12);
  });

  it.each(missingReasons.filter((reason) => reason !== 'none'))(
    'is not measured because of %s',
    (mainReason) => {
      const measuredShare = leastMeasuredShare - 0.001;
      expect(judge(...repetitionOver([20, 21], { measuredShare, mainReason }), limits)).toEqual(
        kneeJudged({ verdict: 'not-measured', reason: mainReason }),
      );
    },
  );

  it('judges once a third of the loaded time was measured', () => {
    expect(judge(...repetitionOver([3, null, null]), limits).verdict).toBe('in-line');
    expect(judge(...repetitionOver([3, null, null, null]), limits).verdict).toBe('not-measured');
  });

  it('gives no verdict where the band is wider than allowed, and judges exactly at it', () => {
    const wide = judge(...repetitionOver([0, 40], {}, kneeAngle.widestBand + 0.01), limits);
    expect(wide).toEqual(kneeJudged({ verdict: 'not-measured', reason: 'band-too-wide' }));
    expect(judge(...repetitionOver([0, 40], {}, kneeAngle.widestBand), limits).verdict).toBe('out-of-line');
  });

  it('never gives the opposite verdict for a wider band', () => {
    const order = ['in-line', 'near-limit', 'out-of-line'];
    const band = fc.double({ min: 0, max: 6, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), band, band, (deg, narrow, more) => {
        const at = (bandDeg: number) =>
          order.indexOf(judge(...repetitionOver([deg], {}, bandDeg), limits).verdict);
        const [sure, unsure] = [at(narrow), at(narrow + more)];
        expect(unsure === sure || unsure === 1).toBe(true);
      }),
    );
  });

  it('is not measured where no angle was seen at all', () => {
    expect(judge(...repetitionOver([null, null]), limits)).toMatchObject({
      verdict: 'not-measured',
      reason: 'out-of-picture',
    });
  });

  const angles = fc.array(fc.double({ min: -60, max: 60, noNaN: true }), { minLength: 1, maxLength: 30 });
  const limit = fc.integer({ min: 1, max: 30 });

  it('gives mirrored angles the mirrored judgement when the limits are swapped', () => {
    fc.assert(
      fc.property(angles, limit, limit, (degs, inwardDeg, outwardDeg) => {
        const one = judge(...repetitionOver(degs), kneeLimits(inwardDeg, outwardDeg));
        const other = judge(...repetitionOver(degs.map((deg) => -deg)), kneeLimits(outwardDeg, inwardDeg));
        expect([other.verdict, other.alignmentScorePct]).toEqual([one.verdict, one.alignmentScorePct]);
      }),
    );
  });

  it('never gets worse when a limit is widened', () => {
    const order = ['in-line', 'near-limit', 'out-of-line'];
    fc.assert(
      fc.property(angles, limit, limit, (degs, deg, moreDeg) => {
        const at = (bothDeg: number) => judge(...repetitionOver(degs), kneeLimits(bothDeg, bothDeg));
        const [narrow, wide] = [at(deg), at(deg + moreDeg)];
        expect(order.indexOf(wide.verdict)).toBeLessThanOrEqual(order.indexOf(narrow.verdict));
        expect(wide.alignmentScorePct!).toBeGreaterThanOrEqual(narrow.alignmentScorePct!);
      }),
    );
  });
});
