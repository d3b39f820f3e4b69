import { describe, expect, it } from 'vitest';
import { butterworthLowPass } from '#core/signal/butterworthLowPass';
import { filterZeroPhase } from '#core/signal/filterZeroPhase';
import reference from '../../../support/scipy-filtfilt.json';

/** Values of a few hundred in double precision, some 160 additions each: far below anything that could be seen. */
const rounding = 1e-9;
const dual30 = butterworthLowPass(6, 30, 2);

describe('filterZeroPhase(signal, filter)', () => {
  const cases = reference.cases.flatMap(({ cutoffHz, rateHz, filtered }) =>
    Object.entries(filtered).map(([name, expected]) => ({
      name: name as keyof typeof filtered,
      cutoffHz,
      rateHz,
      expected,
    })),
  );
  it.each(cases)(
    `equals filtfilt of ${reference.made} on "$name" at $cutoffHz Hz in $rateHz`,
    ({ name, cutoffHz, rateHz, expected }) => {
      const signal = Float64Array.from(reference.signals[name]);
      const ours = filterZeroPhase(signal, butterworthLowPass(cutoffHz, rateHz, 2));
      expect(ours).toHaveLength(expected.length);
      expected.forEach((value, i) => expect(Math.abs(ours[i]! - value)).toBeLessThan(rounding));
    },
  );

  it('attenuates to 0.707 at the cut-off, both passes together', () => {
    // 6 Hz in 60: a period is 10 samples, so a whole number of them fits and the middle is free of end effects.
    const wave = Float64Array.from({ length: 400 }, (_, i) => Math.sin((2 * Math.PI * 6 * i) / 60));
    const passed = filterZeroPhase(wave, butterworthLowPass(6, 60, 2)).subarray(100, 300);
    const energy = (values: Float64Array) => values.reduce((sum, value) => sum + value ** 2, 0);
    expect(Math.sqrt(energy(passed) / energy(wave.subarray(100, 300)))).toBeCloseTo(Math.SQRT1_2, 9);
    for (const { dualGainAtCutoff } of reference.cases) expect(dualGainAtCutoff).toBeCloseTo(Math.SQRT1_2, 9);
  });

  it('keeps a symmetric bump symmetric, without a shift in time', () => {
    // At rest for 60 samples at either end, where the poles (0.42 off the middle) have forgotten all.
    const bump = Float64Array.from({ length: 161 }, (_, i) => 5 + Math.exp(-(((i - 80) / 4) ** 2)));
    const passed = filterZeroPhase(bump, dual30);
    for (let i = 0; i <= 80; i++) expect(passed[i]).toBeCloseTo(passed[160 - i]!, 12);
    expect(passed.indexOf(Math.max(...passed))).toBe(80);
  });

  it('is linear: it filters a sum of scaled signals like each on its own', () => {
    const [a, b] = [2.3, 0.7].map((step) => Float64Array.from({ length: 33 }, (_, i) => Math.sin(step * i)));
    const sum = filterZeroPhase(
      a!.map((value, i) => 3 * value + b![i]! - 11),
      dual30,
    );
    const [fa, fb] = [filterZeroPhase(a!, dual30), filterZeroPhase(b!, dual30)];
    sum.forEach((value, i) => expect(value).toBeCloseTo(3 * fa[i]! + fb[i]! - 11, 9));
  });

  it('does not change its input', () => {
    const signal = Float64Array.from({ length: 20 }, (_, i) => i % 3);
    const before = signal.slice();
    filterZeroPhase(signal, dual30);
    expect(signal).toEqual(before);
  });

  it.each([0, 1, 9])('returns a copy of a signal of %d samples, too short to be filtered', (length) => {
    const signal = Float64Array.from({ length }, (_, i) => i ** 2 + 5);
    const passed = filterZeroPhase(signal, dual30);
    expect(passed).toEqual(signal);
    expect(passed).not.toBe(signal);
  });
});
