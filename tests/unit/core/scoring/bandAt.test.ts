import { describe, expect, it } from 'vitest';
import type { Measurement } from '#core/measurement/measurement';
import { bandAt } from '#core/scoring/bandAt';
import { noRange, rangesWith } from '../../../support/kneeJudgement';

const extreme = (band: number) => ({ value: 0, band, sample: 0, timeMs: 0 });
/** A repetition from one sample to another, both included, with a band for its least and its most. */
const repetition = (loadedFrom: number, loadedTo: number, least: number | null, most: number | null) => ({
  loadedFrom,
  loadedTo,
  ranges: rangesWith({
    'knee-angle': {
      min: least === null ? null : extreme(least),
      max: most === null ? null : extreme(most),
    },
  }),
});
const measurement = (...repetitions: ReturnType<typeof repetition>[]) =>
  ({ repetitions }) as unknown as Pick<Measurement, 'repetitions'>;

describe('bandAt(measurement, sample, end)', () => {
  const two = measurement(repetition(10, 20, 3, 4), repetition(30, 40, 6, 5));

  it.each([
    [10, 'least', 3],
    [15, 'most', 4],
    [20, 'most', 4],
    [30, 'most', 5],
    [40, 'least', 6],
  ] as const)('is that of the repetition that sample %i belongs to, %s', (sample, end, band) => {
    expect(bandAt(two, sample, end)).toBe(band);
  });

  it.each([
    [9, 'most', 5],
    [21, 'least', 6],
    [41, 'most', 5],
  ] as const)('is the widest of all outside of them: sample %i, %s', (sample, end, band) => {
    expect(bandAt(two, sample, end)).toBe(band);
  });

  it('is not known where no repetition has one, or the one it belongs to has none', () => {
    expect(bandAt(measurement(), 3, 'most')).toBeNull();
    expect(bandAt(measurement(repetition(0, 5, null, null), repetition(6, 9, 2, 2)), 3, 'most')).toBeNull();
    expect(
      bandAt(
        measurement({ ...repetition(0, 5, 1, 1), ranges: rangesWith({ 'knee-angle': noRange }) }),
        3,
        'most',
      ),
    ).toBeNull();
  });
});
