import { describe, expect, it } from 'vitest';
import { findSetPeak } from '#core/scoring/findSetPeak';

const repetition = (value: number, band = 5, completeness: 'complete' | 'partial' = 'complete') => ({
  completeness,
  ranges: { 'knee-angle': { max: { value, band, sample: 0, timeMs: 0 } } },
});

describe('findSetPeak(repetitions)', () => {
  it('is the mean of complete, measured repetitions', () => {
    const all = [repetition(4), repetition(8), repetition(12), repetition(90, 5, 'partial')];
    expect(
      findSetPeak([...all, { completeness: 'complete', ranges: { 'knee-angle': { max: null } } }]),
    ).toMatchObject({
      meanDeg: 8,
      count: 3,
    });
  });

  it('has the error of the bands, however many repetitions, and of their scatter, less the more there are', () => {
    const alike = (count: number) => findSetPeak(Array.from({ length: count }, () => repetition(8, 1.645)))!;
    expect(alike(4).semDeg).toBeCloseTo(1, 9);
    expect(alike(40).semDeg).toBeCloseTo(1, 9);
    // SD of 5, 8, 11 is 3: hypot(1, 3 / sqrt 3) = 2.
    const scattered = findSetPeak([5, 8, 11].map((value) => repetition(value, 1.645)))!;
    expect(scattered.semDeg).toBeCloseTo(2, 9);
  });

  it('counts what the repetitions do not have by themselves as the error that they share', () => {
    // A band of 5 of which 3 are the repetition's own: 4 are shared, a standard deviation of 4 / 1.645.
    const { max } = repetition(8, 5).ranges['knee-angle'];
    const alike = {
      completeness: 'complete',
      ranges: { 'knee-angle': { max: { ...max, ownBand: 3 } } },
    } as const;
    expect(findSetPeak([alike, alike, alike])!.semDeg).toBeCloseTo(4 / 1.645, 9);
  });

  it('says something of three repetitions, and nothing of two', () => {
    expect(findSetPeak([repetition(4), repetition(5), repetition(6)])).toMatchObject({
      meanDeg: 5,
      count: 3,
    });
    expect(findSetPeak([repetition(4), repetition(5)])).toBeNull();
    expect(findSetPeak([repetition(4), repetition(5), repetition(6, 5, 'partial')])).toBeNull();
  });
});
