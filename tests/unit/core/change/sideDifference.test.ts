import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sideDifference, type LegAngle, type LegPair } from '#core/change/sideDifference';

/** A total of 3.01 of which 2 from the view: the rest is sqrt(3.01^2 - 2^2) = 2.249. */
const leg = (deg: number): LegAngle => ({ deg, yawSdDeg: 2, otherSdDeg: Math.sqrt(3.01 ** 2 - 2 ** 2) });
const day: LegPair = { left: leg(12), right: leg(5) };

describe('sideDifference(days, placing)', () => {
  // same: sqrt(2 x 2.249^2 + 4^2) = 5.111, x 1.96 = 10.02; own: sqrt(2 x 3.01^2) = 4.257, x 1.96 = 8.34.
  it.each([
    ['same', 1, 10.0, 'within-error'],
    ['own', 1, 8.3, 'within-error'],
    ['same', 3, 5.8, 'higher'],
    ['own', 3, 4.8, 'higher'],
  ] as const)('with %s placing and %d days: 7 give or take %d', (placing, days, bandDeg, verdict) => {
    const found = sideDifference(Array<LegPair>(days).fill(day), placing);
    expect(found).toMatchObject({ difference: 7, leftDeg: 12, rightDeg: 5, days, verdict });
    expect(found.bandDeg).toBeCloseTo(bandDeg, 1);
  });

  it('turns its sign where the legs are exchanged', () => {
    const exchanged = { left: day.right, right: day.left };
    expect(sideDifference([exchanged, exchanged, exchanged], 'own')).toMatchObject({
      difference: -7,
      verdict: 'lower',
    });
  });

  it('is never surer with one placing for both legs than with one for each', () => {
    const anySd = fc.double({ min: 0, max: 6, noNaN: true });
    const anyLeg = fc.record({ deg: fc.integer({ min: -20, max: 30 }), yawSdDeg: anySd, otherSdDeg: anySd });
    fc.assert(
      fc.property(fc.array(fc.record({ left: anyLeg, right: anyLeg }), { minLength: 1 }), (days) => {
        const [same, own] = [sideDifference(days, 'same'), sideDifference(days, 'own')];
        expect(same.bandDeg).toBeGreaterThanOrEqual(own.bandDeg - 1e-9);
        expect(same.difference).toBe(own.difference);
      }),
    );
  });

  it('refuses no day, an error below 0 and what is not a number', () => {
    expect(() => sideDifference([], 'own')).toThrow(RangeError);
    expect(() => sideDifference([{ left: leg(NaN), right: leg(1) }], 'own')).toThrow('got NaN');
    const wrong = { ...leg(1), yawSdDeg: -1 };
    expect(() => sideDifference([{ left: wrong, right: leg(1) }], 'own')).toThrow('got -1');
  });
});
