import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/seededRandom';
import { intraclassCorrelation, meanSquares } from '#core/statistics/intraclassCorrelation';

/** Shrout & Fleiss 1979, table 2: six people rated by four judges. */
const shroutFleiss = [
  [9, 2, 5, 8],
  [6, 1, 3, 2],
  [8, 4, 6, 8],
  [7, 1, 2, 6],
  [10, 5, 6, 9],
  [6, 2, 4, 7],
];

describe('meanSquares(ratings)', () => {
  it('gives the mean squares of a table worked by hand', () => {
    // Rows (3, 7) and (8, 14): row means 5 and 11, column means 5.5 and 10.5, grand mean 8.
    // Between: 2 (9 + 9) / 1 = 36; judges: 2 (6.25 + 6.25) / 1 = 25; within: (4 + 4 + 9 + 9) / 2 = 13;
    // residual: 3 - 5 - 5.5 + 8 = 0.5, and so on, 4 x 0.25 / 1 = 1.
    const { between, judges, within, residual } = meanSquares([
      [3, 7],
      [8, 14],
    ]);
    expect([between, judges, within, residual]).toEqual([36, 25, 13, 1]);
  });

  it.each([
    ['no rows', [], '0 x 0'],
    ['one row', [[4, 5]], '1 x 2'],
    ['one column', [[4], [6]], '2 x 1'],
  ])('refuses %s', (_, ratings, size) => {
    expect(() => meanSquares(ratings)).toThrow(new RangeError(`Ratings need 2 x 2 or more, got ${size}.`));
  });

  it('refuses uneven rows and what is not a number', () => {
    expect(() => meanSquares([[1, 2], [3]])).toThrow('Each row needs 2 ratings, got one of 1.');
    expect(() =>
      meanSquares([
        [1, 2],
        [NaN, 4],
      ]),
    ).toThrow('got NaN');
  });
});

describe('intraclassCorrelation(ratings)', () => {
  it('gives the three forms that Shrout & Fleiss print for their data', () => {
    const { oneWay, agreement, consistency } = intraclassCorrelation(shroutFleiss);
    expect([oneWay, agreement, consistency].map((icc) => icc!.toFixed(2))).toEqual(['0.17', '0.29', '0.71']);
  });

  it('has the intervals that are published for their data', () => {
    // Of these data other programs print .019 to .76 for ICC(2,1) and .34 to .95 for ICC(3,1) (from memory).
    const { agreementInterval, consistencyInterval } = intraclassCorrelation(shroutFleiss);
    expect(agreementInterval!.low).toBeCloseTo(0.019, 2);
    expect(agreementInterval!.high).toBeCloseTo(0.76, 2);
    expect(consistencyInterval!.low).toBeCloseTo(0.342, 2);
    expect(consistencyInterval!.high).toBeCloseTo(0.95, 2);
  });

  it('has intervals around the value, which cover what is true about 19 times in 20', () => {
    // Rows with a standard deviation of 3, two columns with errors of 1 each and no shift: ICC 9 / 10.
    const { gaussian: normal } = seededRandom(20260);
    const tries = 400;
    let covered = 0;
    for (let trial = 0; trial < tries; trial++) {
      const ratings = Array.from({ length: 12 }, () => {
        const own = 3 * normal();
        return [own + normal(), own + normal()];
      });
      const {
        consistency,
        consistencyInterval: found,
        agreement,
        agreementInterval,
      } = intraclassCorrelation(ratings);
      expect(found!.low).toBeLessThan(consistency!);
      expect(found!.high).toBeGreaterThan(consistency!);
      expect(agreementInterval!.low).toBeLessThan(agreement!);
      expect(agreementInterval!.high).toBeGreaterThan(agreement!);
      if (found!.low <= 0.9 && 0.9 <= found!.high) covered++;
    }
    // 95 % of 400 with a standard error of 1.1 %: three of those either way.
    expect(Math.abs(covered / tries - 0.95)).toBeLessThan(0.033);
  });

  it('is 1 in every form where all judges agree', () => {
    const same = [
      [2, 2],
      [5, 5],
      [11, 11],
    ];
    const { oneWay, agreement, consistency, ...intervals } = intraclassCorrelation(same);
    for (const icc of [oneWay, agreement, consistency]) expect(icc).toBeCloseTo(1, 12);
    expect(intervals).toEqual({ agreementInterval: null, consistencyInterval: null });
  });

  it('distinguishes consistency from agreement where one judge is always 3 higher', () => {
    // Between: 2 (var 1, 4, 9 = 49/3) = 98/3; judges: 3 x 2 x 1.5^2 = 13.5; residual 0.
    // Agreement: (98/3) / (98/3 + 2 x 13.5 / 3) = 98 / 125.
    const { agreement, consistency } = intraclassCorrelation([
      [1, 4],
      [4, 7],
      [9, 12],
    ]);
    expect(consistency).toBeCloseTo(1, 12);
    expect(agreement).toBeCloseTo(98 / 125, 12);
  });

  it('is null where nothing differs', () => {
    expect(
      intraclassCorrelation([
        [0.1, 0.1, 0.1],
        [0.1, 0.1, 0.1],
      ]),
    ).toMatchObject({
      ...{ oneWay: null, agreement: null, consistency: null },
      ...{ agreementInterval: null, consistencyInterval: null },
    });
  });

  it('is null in a form without variance to share, and below 0 where judges contradict each other', () => {
    // Rows and columns have the same means: between and judges 0, residual 1. Agreement: -1 / (1 - 2 x 1 / 2) = -1 / 0.
    expect(
      intraclassCorrelation([
        [1, 2],
        [2, 1],
      ]),
    ).toEqual({
      ...{ oneWay: -1, agreement: null, consistency: -1 },
      ...{ agreementInterval: null, consistencyInterval: null },
    });
  });

  it('does not depend on shift, scale, or the order of people and judges', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -50, max: 50 }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (shift, factor) => {
          const changed = shroutFleiss.map((row) => row.map((rating) => factor * rating + shift).reverse());
          const before = intraclassCorrelation(shroutFleiss);
          const after = intraclassCorrelation(changed.toReversed());
          for (const form of ['oneWay', 'agreement', 'consistency'] as const)
            expect(after[form]).toBeCloseTo(before[form]!, 8);
        },
      ),
    );
  });
});
