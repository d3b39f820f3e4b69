import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measure } from '#core/measurement/measure';
import type { MeasureRange } from '#core/measurement/measureRange';
import { kneeAngle } from '#core/measures/kneeAngle';
import { limitEnds } from '#core/measures/limitEnd';
import { findMeasure, measureIds, type MeasureId } from '#core/measures/measures';
import { defaultLimits, withLimit, type Limits } from '#core/protocol/limits';
import { beyondLimit } from '#core/scoring/beyondLimit';
import { decidingMeasure, decidingWay } from '#core/scoring/deciding';
import { judge, judgementOf } from '#core/scoring/judge';
import { judgeMeasure } from '#core/scoring/judgeMeasure';
import { leastMeasuredShare } from '#core/scoring/verdict';
import { filmPerson } from '../../../support/syntheticPerson';

const range = (min: number, max: number, band = 2, change: Partial<MeasureRange> = {}): MeasureRange => ({
  min: { value: min, band, sample: 1, timeMs: 30 },
  max: { value: max, band, sample: 2, timeMs: 60 },
  measuredShare: 1,
  mainReason: null,
  ...change,
});

describe('judgeMeasure(measure, range, limits, sureness)', () => {
  it.each([
    // One standard deviation is 2 / 1.645; Phi(.8416) = .8 lies 1.023 from the limit, Phi(1.645) = .95 lies 2 from it.
    [0, 7.99, 'in', 'most'],
    [0, 8.01, 'probably-in', 'most'],
    [0, 8.97, 'probably-in', 'most'],
    [0, 8.98, 'cant-tell', 'most'],
    [0, 11.02, 'cant-tell', 'most'],
    [0, 11.03, 'probably-out', 'most'],
    [0, 12.01, 'out', 'most'],
    [-6.01, 0, 'cant-tell', 'least'],
    [-7.01, 0, 'out', 'least'],
    [-9, 13, 'out', 'least'],
  ] as const)('judges a trunk that went from %d to %d degrees as %s, by its %s', (min, max, verdict, end) => {
    const judged = judgeMeasure('trunk-lean', range(min, max), { least: -5, most: 10 }, 0.8);
    expect(judged).toMatchObject({ verdict, end, reason: null });
    expect(judged.extreme!.value).toBe(end === 'most' ? max : min);
  });

  it('judges only the end that has a limit', () => {
    expect(judgeMeasure('trunk-lean', range(-20, 0), { most: 10 }, 0.8).verdict).toBe('in');
    expect(judgeMeasure('trunk-lean', range(0, 20), { least: -10 }, 0.8).verdict).toBe('in');
  });

  it('requires the deepest point to reach the least depth, not the first', () => {
    expect(judgeMeasure('depth', range(0, 0.3, 0.02), { least: 0.2 }, 0.8).verdict).toBe('in');
    expect(judgeMeasure('depth', range(0, 0.1, 0.02), { least: 0.2 }, 0.8)).toMatchObject({
      verdict: 'out',
      end: 'least',
      extreme: { value: 0.1 },
    });
    expect(judgeMeasure('depth', range(0, 0.4, 0.02), { least: 0.2, most: 0.3 }, 0.8)).toMatchObject({
      verdict: 'out',
      end: 'most',
    });
  });

  it('gives a reason and no verdict where too little was measured', () => {
    const unseen = range(0, 20, 2, { measuredShare: leastMeasuredShare - 0.01, mainReason: 'no-stance' });
    expect(judgeMeasure('pelvis-place', unseen, { least: 0.5 }, 0.8)).toEqual({
      measure: 'pelvis-place',
      verdict: 'not-measured',
      chanceInLine: null,
      reason: 'no-stance',
      end: 'least',
      extreme: null,
    });
    const never = { min: null, max: null, measuredShare: 0, mainReason: null };
    expect(judgeMeasure('depth', never, { most: 0.3 }, 0.8).reason).toBe('frames-missing');
    const some = range(0, 20);
    for (const half of [
      { ...some, min: null },
      { ...some, max: null },
    ])
      expect(judgeMeasure('trunk-lean', half, { most: 10 }, 0.8)).toMatchObject({
        verdict: 'not-measured',
        reason: 'frames-missing',
      });
  });

  it('gives no verdict where the band of either end is wider than the measure allows', () => {
    const { widestBand } = kneeAngle;
    const wide = { value: 20, band: widestBand + 0.01, sample: 2, timeMs: 60 };
    const limits = { least: -10, most: 10 };
    for (const ends of [{ max: wide }, { min: { ...wide, value: -20 } }])
      expect(judgeMeasure('knee-angle', { ...range(-3, 3), ...ends }, limits, 0.8)).toMatchObject({
        verdict: 'not-measured',
        reason: 'band-too-wide',
      });
  });

  it('is told by its most where both limits are equally close', () => {
    expect(judgeMeasure('trunk-lean', range(-12, 12), { least: -10, most: 10 }, 0.8)).toMatchObject({
      end: 'most',
      extreme: { value: 12 },
    });
    // 1 below the least, 3 within the most.
    expect(judgeMeasure('trunk-lean', range(-11, 7), { least: -10, most: 10 }, 0.8).end).toBe('least');
  });
});

describe('judge(repetition, measurement, limits) with limits other than the knee angle', () => {
  const setup = { task: 'split-stance-sit-to-stand', side: 'right' } as const;
  const { track } = filmPerson({
    ...setup,
    repetitions: [{ peakDeg: 2 }, { peakDeg: 24 }],
    camera: { distanceM: 12, focalPx: 6000 },
    rateHz: 25,
  });
  const measurement = measure(track, setup);
  const [straight, inward] = measurement.repetitions;
  /** A limit that the straight repetition exceeds by this many bands. */
  const beyond = (id: MeasureId, bands: number): Limits => {
    const { value, band } = straight!.ranges[id].max!;
    return { ...defaultLimits, [id]: { most: value - bands * band } };
  };

  it('changes nothing where there are none', () => {
    for (const repetition of measurement.repetitions) {
      const judgement = judge(repetition, measurement, defaultLimits);
      const knee = judgementOf(judgement, 'knee-angle');
      expect(judgement).toMatchObject({ verdict: knee.verdict, decidedBy: 'knee-angle', measures: [knee] });
    }
  });

  it('follows the gravest verdict', () => {
    expect(judge(straight!, measurement, defaultLimits).verdict).not.toBe('out');
    const out = judge(straight!, measurement, beyond('depth', 1.5));
    expect(out).toMatchObject({ verdict: 'out', decidedBy: 'depth', reason: null });
    expect(judgementOf(out, 'knee-angle').verdict).not.toBe('out');
    expect(decidingMeasure(out)).toMatchObject({ measure: 'depth', end: 'most' });
    expect(decidingWay(out)).toBeNull();
    expect(judge(straight!, measurement, beyond('depth', 0.4)).verdict).toBe('cant-tell');
    expect(beyondLimit(out, beyond('depth', 1.5))).toBeGreaterThan(0);

    const knee = judge(inward!, measurement, beyond('depth', 1.5));
    expect(knee).toMatchObject({ verdict: 'out', decidedBy: 'knee-angle' });
    expect(decidingMeasure(knee)).toMatchObject({ measure: 'knee-angle', end: 'most' });
    expect(decidingWay(knee)).toBe('inward');
  });

  it('is not measured where a limited measure is not, unless another is out of line', () => {
    const unseen = { min: null, max: null, measuredShare: 0, mainReason: 'no-stance' } as const;
    const blind = { ...straight!, ranges: { ...straight!.ranges, 'pelvis-place': unseen } };
    const limits = { ...defaultLimits, 'pelvis-place': { least: 0.5 } };
    expect(judge(blind, measurement, limits)).toMatchObject({
      verdict: 'not-measured',
      reason: 'no-stance',
      decidedBy: 'pelvis-place',
    });
    const usual = judge(straight!, measurement, defaultLimits);
    expect(judgementOf(judge(blind, measurement, limits), 'knee-angle')).toEqual(
      judgementOf(usual, 'knee-angle'),
    );
    const withDepth = { ...limits, ...beyond('depth', 1.5) };
    expect(judge(blind, measurement, withDepth)).toMatchObject({
      verdict: 'out',
      reason: null,
      decidedBy: 'depth',
    });
    const lost = { ...unseen, mainReason: 'joint-unseen' } as const;
    const noKnee = { ...straight!, ranges: { ...straight!.ranges, 'knee-angle': lost } };
    const byDepth = judge(noKnee, measurement, beyond('depth', 1.5));
    expect(byDepth).toMatchObject({ verdict: 'out', decidedBy: 'depth' });
    expect(judgementOf(byDepth, 'knee-angle')).toMatchObject({ verdict: 'not-measured', extreme: null });
    expect(judge(noKnee, measurement, beyond('depth', -9))).toMatchObject({
      verdict: 'not-measured',
      reason: 'joint-unseen',
      decidedBy: 'knee-angle',
    });
  });

  it('rests, of two measures with one verdict, on the knee angle, then on the less likely, then on the first', () => {
    const at = (value: number) => ({ value, band: 2, sample: 1, timeMs: 30 });
    const ranges = {
      ...straight!.ranges,
      'knee-angle': { ...range(0, 30), mainReason: null },
      'pelvic-drop': { ...range(0, 0), max: at(30) },
      'trunk-lean': { ...range(0, 0), max: at(35) },
    };
    const decided = (knee: number, drop: number, lean: number) => {
      const limits: Limits = {
        'knee-angle': { least: -30, most: knee },
        'pelvic-drop': { most: drop },
        'trunk-lean': { most: lean },
      };
      return judge({ ...straight!, ranges }, measurement, limits).decidedBy;
    };
    expect(decided(10, 10, 10)).toBe('knee-angle');
    // Beyond by 3 of 2, and by 4 of 2: both out.
    expect(decided(40, 27, 31)).toBe('trunk-lean');
    expect(decided(40, 26, 32)).toBe('pelvic-drop');
    expect(decided(40, 27, 32)).toBe('pelvic-drop');
    // Both exactly at their limits, an even chance each: the one that is shown first.
    expect(decided(40, 30, 35)).toBe('pelvic-drop');
  });

  it('finds the judgement of a measure that always has limits among those of others', () => {
    const one = judgementOf(judge(straight!, measurement, beyond('depth', 1)), 'knee-angle');
    const depthFirst = judge(straight!, measurement, beyond('depth', 1)).measures.toReversed();
    expect(depthFirst[0]!.measure).toBe('depth');
    expect(judgementOf({ measures: depthFirst }, 'knee-angle')).toEqual(one);
  });

  it('never gives a repetition a better verdict for a tighter limit', () => {
    const order = ['in', 'probably-in', 'cant-tell', 'not-measured', 'probably-out', 'out'];
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...measureIds),
        fc.constantFrom(...limitEnds),
        share,
        share,
        (id, end, a, b) => {
          const { min, max } = findMeasure(id).limits[end];
          const gravity = (value: number) =>
            order.indexOf(judge(straight!, measurement, withLimit(defaultLimits, id, end, value)).verdict);
          const [low, high] = [min + Math.min(a, b) * (max - min), min + Math.max(a, b) * (max - min)];
          const [tight, loose] = end === 'most' ? [low, high] : [high, low];
          expect(gravity(tight)).toBeGreaterThanOrEqual(gravity(loose));
        },
      ),
    );
  });
});
