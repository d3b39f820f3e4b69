import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ownError, repeatAgreement, semOfDay, type Repeat } from '#core/reliability/ownError';
import { detectableChange95 } from '#core/statistics/detectableChange';

const five: Repeat[] = [
  { first: 9.1, second: 10.4 },
  { first: 7.8, second: 6.9 },
  { first: 11.2, second: 8.7 },
  { first: 6.5, second: 8.0 },
  { first: 10.0, second: 9.2 },
];
const ofError = (error: number, count: number): Repeat[] =>
  Array<Repeat>(count).fill({ first: 0, second: error * Math.SQRT2 });

describe('ownError(repeats, published)', () => {
  it('is drawn towards the published one', () => {
    // sqrt((8 x 3.01^2 + 11.64 / 2) / 13) = sqrt(78.30 / 13) = 2.454; x 1.96 sqrt 2 = 6.80.
    const { own, used, from } = ownError(five);
    expect(own!.sd).toBeCloseTo(1.079, 3);
    expect(used).toBeCloseTo(2.454, 3);
    expect(detectableChange95(used)).toBeCloseTo(6.8, 2);
    expect(from).toBe('both');
  });

  it('is the published one below five repeats', () => {
    expect(ownError(five.slice(1))).toMatchObject({ used: 3.01, from: 'published', own: { count: 4 } });
    expect(ownError([])).toEqual({ own: null, used: 3.01, from: 'published' });
  });

  it('lies between own and published, and comes nearer to the own with each repeat', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        fc.integer({ min: 5, max: 60 }),
        (error, count) => {
          const [less, more] = [
            ownError(ofError(error, count)).used,
            ownError(ofError(error, count + 1)).used,
          ];
          expect(Math.abs(more - error)).toBeLessThanOrEqual(Math.abs(less - error) + 1e-9);
          expect(less).toBeGreaterThanOrEqual(Math.min(error, 3.01) - 1e-9);
          expect(less).toBeLessThanOrEqual(Math.max(error, 3.01) + 1e-9);
        },
      ),
    );
  });

  it('counts the published one as much as eight repeats', () => {
    // sqrt((9 + 1) / 2) with 3 and 1.
    expect(ownError(ofError(1, 8), 3).used).toBeCloseTo(Math.sqrt(5), 9);
  });
});

describe('semOfDay(error, bandSd)', () => {
  it("is the wider one of the published error and the set's own, until the practice has its own", () => {
    expect(semOfDay(ownError([]), 2)).toBe(3.01);
    expect(semOfDay(ownError([]), 3.9)).toBe(3.9);
    expect(semOfDay(ownError(five), 3.9)).toBeCloseTo(2.454, 3);
  });
});

describe('repeatAgreement(repeats)', () => {
  it('has second less first, and how much the pairs differ', () => {
    // Differences 1.3, -.9, -2.5, 1.5, -.8: mean -1.4 / 5; means 9.75, 7.35, 9.95, 7.25, 9.6: variance 7.368 / 4 = 1.842.
    const { limits, icc, sdBetween } = repeatAgreement(five)!;
    expect(limits.meanDifference).toBeCloseTo(-0.28, 9);
    expect(sdBetween).toBeCloseTo(1.357, 3);
    // Between 2 x 1.842 = 3.684; residual: variance of the differences / 2 = 1.406; judges 5 x .28^2 / 2 = .196:
    // (3.684 - 1.406) / (3.684 + 1.406 + 2 (.196 - 1.406) / 5) = .4946.
    expect(icc.agreement).toBeCloseTo(0.4946, 4);
  });

  it('is null below five repeats', () => {
    expect(repeatAgreement(five.slice(1))).toBeNull();
  });
});
