import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { surenesses } from '#core/chance/grade';
import { missingReasons, reasonCode } from '#core/measurement/curve';
import type { MeasuredRepetition } from '#core/measurement/measurement';
import type { MeasureRange } from '#core/measurement/measureRange';
import { kneeAngle } from '#core/measures/kneeAngle';
import { mapMeasures } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import { chanceWithin } from '#core/scoring/chanceWithin';
import { kneeDirection } from '#core/scoring/deciding';
import { gradeAgain, judge, judgementOf } from '#core/scoring/judge';
import { leastMeasuredShare } from '#core/scoring/verdict';
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

describe('chanceWithin(held, limits)', () => {
  const most = (value: number, band: number) => chanceWithin({ most: { value, band } }, { most: 10 });
  it.each([
    // Tables of the normal distribution: Phi(0), Phi(1), Phi(1.645), Phi(-2).
    [10, 3, 0.5],
    [10 - 3 / 1.645, 3, 0.8413],
    [7, 3, 0.95],
    [10 + (2 * 3) / 1.645, 3, 0.0228],
  ])('gives a peak of %f degrees, give or take %f, its chance', (deg, band, chance) => {
    expect(most(deg, band)).toBeCloseTo(chance, 4);
  });

  it('knows a value without an error for sure, and counts one exactly at a limit as within', () => {
    expect([most(9.999, 0), most(10, 0), most(10.001, 0)]).toEqual([1, 1, 0]);
  });

  it('takes both ends together, and an end without a value or a limit as kept', () => {
    const both = { least: { value: -10, band: 2 }, most: { value: 10, band: 5 } };
    expect(chanceWithin(both, { least: -10, most: 10 })).toBeCloseTo(0.25, 12);
    expect(chanceWithin(both, { most: 10 })).toBeCloseTo(0.5, 12);
    expect(chanceWithin({ least: null }, { least: -10, most: 10 })).toBe(1);
  });
});

describe('judge(repetition, measurement, limits)', () => {
  it.each([
    // Limit 10 inward, band 2: firm from 2 away on, probable from 1.023.
    [7.99, 'in'],
    [8.01, 'probably-in'],
    [8.98, 'cant-tell'],
    [11.02, 'cant-tell'],
    [11.03, 'probably-out'],
    [12.01, 'out'],
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
    // Limit 7 outward, band 2.
    [-4.99, 'in'],
    [-5.01, 'probably-in'],
    [-5.98, 'cant-tell'],
    [-8.02, 'cant-tell'],
    [-8.03, 'probably-out'],
    [-9.01, 'out'],
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
    expect(judgement.verdict).toBe('probably-in');
    expect(kneeDirection(judgement)).toBe('outward');
  });

  it('judges a knee that is exactly in line all the time', () => {
    expect(judge(...repetitionOver([0, 0, 0]), limits)).toMatchObject({
      verdict: 'in',
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
    expect(judge(...repetitionOver([3, null, null]), limits).verdict).toBe('in');
    expect(judge(...repetitionOver([3, null, null, null]), limits).verdict).toBe('not-measured');
  });

  it('gives no verdict where the band is wider than allowed, and judges exactly at it', () => {
    const wide = judge(...repetitionOver([0, 40], {}, kneeAngle.widestBand + 0.01), limits);
    expect(wide).toEqual(kneeJudged({ verdict: 'not-measured', reason: 'band-too-wide' }));
    expect(judge(...repetitionOver([0, 40], {}, kneeAngle.widestBand), limits).verdict).toBe('out');
  });

  it('never gives the opposite verdict for a wider band', () => {
    const order = ['in', 'probably-in', 'cant-tell', 'probably-out', 'out'];
    const band = fc.double({ min: 0, max: 6, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), band, band, (deg, narrow, more) => {
        const at = (bandDeg: number) =>
          order.indexOf(judge(...repetitionOver([deg], {}, bandDeg), limits).verdict);
        const [sure, unsure] = [at(narrow), at(narrow + more)];
        // Never farther from the middle, nor beyond it.
        expect(unsure === sure || Math.abs(unsure - 2) < Math.abs(sure - 2)).toBe(true);
        expect((unsure - 2) * (sure - 2)).toBeGreaterThanOrEqual(0);
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
    const order = ['in', 'probably-in', 'cant-tell', 'probably-out', 'out'];
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

describe('gradeAgain(judgement, sureness)', () => {
  it('is what judging anew for that sureness gives', () => {
    for (const peakDeg of [7, 8.5, 9, 10, 11, 11.5, 12.4, 14]) {
      const [repetition, curves] = repetitionOver([0, peakDeg, 1]);
      for (const sureness of surenesses)
        expect(gradeAgain(judge(repetition, curves, limits), sureness)).toEqual(
          judge(repetition, curves, limits, sureness),
        );
    }
  });

  it('names no side to somebody who wants to be surer', () => {
    const judged = judge(...repetitionOver([0, 8.5, 1]), limits); // A chance of 89 %.
    expect([judged.verdict, gradeAgain(judged, 0.95).verdict]).toEqual(['probably-in', 'cant-tell']);
  });
});
