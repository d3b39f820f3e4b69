import { describe, expect, it } from 'vitest';
import { butterworthLowPass, type LowPass } from '#core/signal/butterworthLowPass';
import reference from '../../../support/scipy-filtfilt.json';

/** The handbook prints five decimals. */
const printedDecimals = 5;
/** Two ways of writing one formula in double precision. */
const sameFormula = 1e-12;

const weights = ({ a0, a1, a2, b1, b2 }: LowPass) => [a0, a1, a2, b1, b2];

describe('butterworthLowPass(cutoffHz, rateHz, passes)', () => {
  // Biomedical Engineering and Design Handbook, p. 139.
  it.each([
    [6, 60, [0.06746, 0.13491, 0.06746, 1.14298, -0.4128]],
    [6, 30, [0.20657, 0.41314, 0.20657, 0.36953, -0.19582]],
  ])('gives the handbook values of a single pass for %d Hz in %d', (cutoffHz, rateHz, printed) => {
    const ours = weights(butterworthLowPass(cutoffHz, rateHz, 1));
    ours.forEach((value, i) => expect(value).toBeCloseTo(printed[i]!, printedDecimals));
  });

  it.each([
    [6, 60, [0.09449, 0.18898, 0.09449, 0.96238, -0.34033]],
    [6, 30, [0.26458, 0.52916, 0.26458, 0.11562, -0.17394]],
  ])(
    'gives the handbook values of a dual pass for %d Hz in %d, within their rounding',
    (cutoffHz, rateHz, printed) => {
      // The handbook divides by 0.802, we by (sqrt 2 - 1)^(1/4) = 0.80225: its printed values come out with its constant,
      const wc = Math.tan((Math.PI * cutoffHz) / rateHz) / 0.802;
      const withItsConstant = weights(butterworthLowPass((rateHz / Math.PI) * Math.atan(wc), rateHz, 1));
      withItsConstant.forEach((value, i) => expect(value).toBeCloseTo(printed[i]!, printedDecimals));
      // and ours differ by that much only: wc by 0.03 %, less than 0.0003, and no weight moves faster than 1.3 of that.
      const ours = weights(butterworthLowPass(cutoffHz, rateHz, 2));
      ours.forEach((value, i) => expect(Math.abs(value - printed[i]!)).toBeLessThan(0.0004));
    },
  );

  it.each(reference.cases)(
    'agrees with scipy for $cutoffHz Hz in $rateHz',
    ({ cutoffHz, rateHz, single, dual }) => {
      for (const [passes, { b, a }] of [
        [1, single],
        [2, dual],
      ] as const) {
        const filter = butterworthLowPass(cutoffHz, rateHz, passes);
        // scipy writes y[n] = b0 x[n] + ... - a1 y[n-1] - a2 y[n-2].
        const ours = [filter.a0, filter.a1, filter.a2, -filter.b1, -filter.b2];
        [...b, ...a.slice(1)].forEach((value, i) =>
          expect(Math.abs(ours[i]! - value)).toBeLessThan(sameFormula),
        );
      }
    },
  );

  it('lets a constant through unchanged, as its weights add up to 1', () => {
    const sum = weights(butterworthLowPass(4, 25, 2)).reduce((a, b) => a + b);
    expect(sum).toBeCloseTo(1, 12);
  });

  it.each([
    ['zero', 0],
    ['negative', -3],
    ['half the rate', 15],
    ['no number', NaN],
  ])('refuses a cut-off that is %s', (_, cutoffHz) => {
    expect(() => butterworthLowPass(cutoffHz, 30, 1)).toThrow(
      new RangeError(`Cut-off must lie between 0 and 15 Hz, got ${cutoffHz} Hz.`),
    );
  });
});
