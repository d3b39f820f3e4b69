import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { intraclassCorrelation } from '#core/statistics/intraclassCorrelation';
import { kappa } from '#core/statistics/kappa';

const anyTable = fc
  .integer({ min: 2, max: 4 })
  .chain((size) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: size, maxLength: size }), {
      minLength: size,
      maxLength: size,
    }),
  )
  .filter((table) => table.flat().some((cell) => cell > 0));

describe('kappa(table)', () => {
  it('agrees with the worked example of Cohen 1960', () => {
    // Two judges, 200 patients, three diagnoses: agreement .70, chance .41, kappa .492; SE .055 (from memory).
    const cohen = [
      [88, 14, 18],
      [10, 40, 10],
      [2, 6, 12],
    ];
    const found = kappa(cohen)!;
    expect(found.count).toBe(200);
    expect(found.agreement).toBeCloseTo(0.7, 12);
    expect(found.chance).toBeCloseTo(0.41, 12);
    expect(found.kappa).toBeCloseTo(0.492, 3);
    expect(found.standardError).toBeCloseTo(0.055, 3);
  });

  it('is worked out by hand for three ordered classes', () => {
    // Rows .5 .35 .15, columns .45 .4 .15: chance .225 + .14 + .0225 = .3875; (.75 - .3875) / .6125 = .5918.
    // By distance: observed .75 + 5/20 x 1/2 = .875; chance .3875 + .47 / 2 (neighbours .2 + .1575 + .0525 + .06)
    // = .6225; .2525 / .3775 = .6689. By its square: .75 + .25 x .75 = .9375; .3875 + .75 x .47 = .74; .1975 / .26 = .7596.
    const {
      agreement,
      chance,
      kappa: plain,
      linear,
      quadratic,
    } = kappa([
      [8, 2, 0],
      [1, 5, 1],
      [0, 1, 2],
    ])!;
    expect([agreement, chance]).toEqual([0.75, expect.closeTo(0.3875, 12)]);
    expect(plain).toBeCloseTo(0.5918, 4);
    expect(linear).toBeCloseTo(0.6689, 4);
    expect(quadratic).toBeCloseTo(0.7596, 4);
  });

  it('has weighted forms that are the plain one in two classes', () => {
    const {
      kappa: plain,
      linear,
      quadratic,
    } = kappa([
      [11, 3],
      [4, 9],
    ])!;
    expect(linear).toBeCloseTo(plain, 12);
    expect(quadratic).toBeCloseTo(plain, 12);
  });

  it('weighted by the square comes to the intraclass correlation where many things are rated', () => {
    // Fleiss & Cohen 1973, Educ Psychol Meas 33:613 (from memory): equal but for terms of 1 / n.
    const table = [
      [80, 20, 0],
      [10, 50, 10],
      [0, 10, 20],
    ];
    const ratings = table.flatMap((row, i) => row.flatMap((cell, j) => Array<number[]>(cell).fill([i, j])));
    const { agreement } = intraclassCorrelation(ratings);
    expect(kappa(table)!.quadratic).toBeCloseTo(agreement!, 2);
  });

  it('is at most 1, the same when the raters are exchanged, and in its interval', () => {
    fc.assert(
      fc.property(anyTable, (table) => {
        const found = kappa(table);
        const exchanged = kappa(table.map((_, i) => table.map((row) => row[i]!)));
        if (found === null) return expect(exchanged).toBeNull();
        expect(found.kappa).toBeLessThanOrEqual(1 + 1e-12);
        expect(exchanged!.kappa).toBeCloseTo(found.kappa, 9);
        expect(exchanged!.linear).toBeCloseTo(found.linear, 9);
        expect(found.low).toBeLessThanOrEqual(found.high);
      }),
    );
  });

  it('is 1 where all are rated alike, and null in a single class', () => {
    expect(
      kappa([
        [4, 0],
        [0, 7],
      ]),
    ).toMatchObject({ kappa: 1, linear: 1, quadratic: 1, low: 1, high: 1 });
    expect(
      kappa([
        [9, 0],
        [0, 0],
      ]),
    ).toBeNull();
  });

  it.each([
    [[[1]], 'square'],
    [[[1, 2], [3]], 'square'],
    [
      [
        [1, -2],
        [3, 4],
      ],
      'got -2',
    ],
    [
      [
        [0, 0],
        [0, 0],
      ],
      'at least one',
    ],
  ])('refuses %j', (table, message) => {
    expect(() => kappa(table)).toThrow(message);
  });
});
