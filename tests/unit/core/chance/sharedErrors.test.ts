import { sum } from 'd3-array';
import { describe, expect, it } from 'vitest';
import { sharedErrors, type SharedError } from '#core/chance/sharedErrors';
import { normalCdf } from '#core/statistics/normalCdf';

const meanOf = (errors: readonly SharedError[], of: (error: number) => number) =>
  sum(errors, ({ error, weight }) => weight * of(error));

describe('sharedErrors(sd, turns)', () => {
  it('has the moments of a normal error', () => {
    // Mean 1, 0, sd^2, 0, 3 sd^4 of the powers from 0 to 4.
    for (const turns of [[], [{ at: 1.3, ownSd: 0.1 }]]) {
      const errors = sharedErrors(3, turns);
      [1, 0, 9, 0, 243].forEach((moment, power) =>
        expect(meanOf(errors, (error) => error ** power)).toBeCloseTo(moment, 9),
      );
    }
  });

  it('sums over a step to what is on its side', () => {
    for (const at of [-30, -7, -0.4, 0, 2.2, 8, 30]) {
      const errors = sharedErrors(3, [{ at, ownSd: 0 }]);
      expect(meanOf(errors, (error) => Number(error <= at))).toBeCloseTo(normalCdf(at / 3), 12);
    }
  });

  it.each([0.001, 0.05, 0.4, 0.59, 0.61, 3, 100])('sums over a turn with an own error of %d', (ownSd) => {
    // Mean of Phi((at - e) / own): Phi(at / sqrt(3^2 + own^2)).
    const errors = sharedErrors(3, [{ at: 2.2, ownSd }]);
    const expected = normalCdf(2.2 / Math.hypot(3, ownSd));
    expect(meanOf(errors, (error) => normalCdf((2.2 - error) / ownSd))).toBeCloseTo(expected, 9);
  });

  it('is 0 alone where nothing is shared', () => {
    expect(sharedErrors(0, [{ at: 2, ownSd: 1 }])).toEqual([{ error: 0, weight: 1 }]);
  });

  it('gives finite numbers for an error that is hardly there', () => {
    const errors = sharedErrors(1e-300, [{ at: 2, ownSd: 1 }]);
    expect(meanOf(errors, (error) => normalCdf(2 - error))).toBeCloseTo(normalCdf(2), 12);
  });
});
