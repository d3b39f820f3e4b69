import { describe, expect, it } from 'vitest';
import { blankCurve, reasonCode } from '#core/measurement/curve';
import { measureRepetition } from '#core/measurement/measureRepetition';
import { mapMeasures } from '#core/measures/measures';
import type { FoundRepetition } from '#core/segmentation/findRepetitions';

const samples = 61;
/** 20 ms apart. */
const timesMs = Float64Array.from({ length: samples }, (_, i) => 20 * i);

/** Every measure rises to 10 at sample 30 and falls again, with a band of 5 of which 3 is own. */
function measured({ missing, narrow = 5 }: { missing: number[]; narrow?: number }) {
  const curve = blankCurve(samples);
  curve.values.forEach((_, i) => (curve.values[i] = 10 - Math.abs(i - 30) / 10));
  for (const i of missing) curve.missing[i] = reasonCode('joint-unseen');
  const band = (i: number) => ({ whole: i === 30 ? narrow : 5, own: 3 });
  const found = { completeness: 'complete', events: {}, loadedFrom: 0, loadedTo: samples - 1 };
  return measureRepetition(
    found as FoundRepetition,
    1,
    timesMs,
    mapMeasures(() => ({ curve, band })),
  ).ranges;
}

describe('measureRepetition(found, number, timesMs, series)', () => {
  it('gives a peak its band and the part of it that is its own', () => {
    expect(measured({ missing: [] })['pelvic-drop'].max).toEqual({
      value: 10,
      sample: 30,
      timeMs: 600,
      band: 5,
      ownBand: 3,
      isAtEdge: false,
    });
  });

  it('lets the band reach to where another moment reaches farther out, with the own part as it is', () => {
    const { max } = measured({ missing: [], narrow: 3 })['knee-angle'];
    // Every tenth sample counts; at 20 and 40 it is 9 with 5 either way, so that 14 is 4 away from the peak.
    expect(max).toMatchObject({ band: 4, ownBand: 3 });
  });

  it('says where a peak is beside a gap, and widens its band by a fifth, all of it its own', () => {
    const { max } = measured({ missing: [32, 33, 34, 35] })['pelvic-drop'];
    expect(max).toMatchObject({ value: 10, band: 6, isAtEdge: true });
    // The shared part, 4, stays: 36 - 16.
    expect(max!.ownBand).toBeCloseTo(Math.sqrt(20), 12);
  });
});
