import { describe, expect, it } from 'vitest';
import { measure } from '#core/measurement/measure';
import { kneeAtDeepest } from '#core/scoring/kneeAtDeepest';
import { noRange, rangesWith } from '../../../support/kneeJudgement';
import { filmPerson } from '../../../support/syntheticPerson';

const setup = { task: 'lateral-step-down', side: 'left' } as const;
const { track } = filmPerson({
  ...setup,
  repetitions: [{ peakDeg: 14 }, { peakDeg: 5 }],
  camera: { distanceM: 12, focalPx: 6000 },
  rateHz: 25,
});
const measurement = measure(track, setup);
const [first] = measurement.repetitions;

describe('kneeAtDeepest(measurement, repetition)', () => {
  it('is the angle at the sample of the greatest depth, no larger than the peak', () => {
    const deepest = kneeAtDeepest(measurement, first!)!;
    expect(deepest.sample).toBe(first!.ranges.depth.max!.sample);
    expect(deepest.value).toBe(measurement.curves['knee-angle'].values[deepest.sample]);
    expect(deepest.value).toBeLessThanOrEqual(first!.ranges['knee-angle'].max!.value);
    expect(deepest.band).toBeGreaterThan(0);
  });

  it.each([
    [5, 'most', 3],
    [0, 'most', 3],
    [-5, 'least', 2],
  ] as const)('of %i degrees has the band of the way that it goes, %s', (deg, _, band) => {
    const extreme = { value: 0, sample: 1, timeMs: 40, band: 0 };
    const ranges = rangesWith({
      'knee-angle': { min: { ...extreme, band: 2 }, max: { ...extreme, band: 3 } },
      depth: { max: extreme },
    });
    const repetition = { ranges, loadedFrom: 0, loadedTo: 2 };
    const knee = { values: Float64Array.of(1, deg, 1), missing: new Uint8Array(3) };
    const made = {
      curves: { 'knee-angle': knee },
      repetitions: [repetition],
    } as unknown as typeof measurement;
    expect(kneeAtDeepest(made, repetition)).toEqual({ value: deg, band, sample: 1, timeMs: 40 });
    const unbanded = {
      ...made,
      repetitions: [{ ...repetition, ranges: rangesWith({}) }],
    } as typeof measurement;
    expect(kneeAtDeepest(unbanded, repetition)).toBeNull();
  });

  it('is missing where the depth or the angle there was not measured', () => {
    expect(kneeAtDeepest(measurement, { ranges: { ...first!.ranges, depth: noRange } })).toBeNull();
    const { values, missing } = measurement.curves['knee-angle'];
    const curves = { ...measurement.curves, 'knee-angle': { values, missing: missing.slice().fill(1) } };
    expect(kneeAtDeepest({ ...measurement, curves }, first!)).toBeNull();
  });
});
