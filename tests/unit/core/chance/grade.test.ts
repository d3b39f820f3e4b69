import { describe, expect, it } from 'vitest';
import { gradeOf, grades, sideOf, surenesses, type Grade } from '#core/chance/grade';
import { normalCdf } from '#core/statistics/normalCdf';

describe('gradeOf(chanceInLine, sureness)', () => {
  it.each([
    [0.8, [0, 0.05, 0.06, 0.2, 0.21, 0.5, 0.79, 0.8, 0.94, 0.95, 1]],
    [0.9, [0, 0.025, 0.03, 0.1, 0.11, 0.5, 0.89, 0.9, 0.97, 0.975, 1]],
    [0.95, [0, 0.0125, 0.013, 0.05, 0.06, 0.5, 0.94, 0.95, 0.987, 0.9875, 1]],
  ] as const)(
    'at %d tells a side from that chance on, firmly with a quarter of the doubt',
    (sureness, chances) => {
      expect(chances.map((chance) => gradeOf(chance, sureness))).toEqual([
        ...['out', 'out', 'probably-out', 'probably-out'],
        ...['cant-tell', 'cant-tell', 'cant-tell'],
        ...['probably-in', 'probably-in', 'in', 'in'],
      ]);
    },
  );

  it('tells the same side to somebody who asks for less', () => {
    for (let chance = 0; chance <= 1; chance += 1 / 512) {
      const [usual, more, most] = surenesses.map((sureness) => sideOf(gradeOf(chance, sureness)));
      if (most !== null) expect(more).toBe(most);
      if (more !== null) expect(usual).toBe(more);
    }
  });

  it('mirrors in and out', () => {
    for (const sureness of surenesses) {
      for (let chance = 0; chance <= 1; chance += 1 / 512) {
        const [at, mirrored] = [gradeOf(chance, sureness), gradeOf(1 - chance, sureness)];
        expect(grades.indexOf(mirrored)).toBe(grades.length - 1 - grades.indexOf(at));
      }
    }
  });

  it.each([
    // Single-leg squat, mean and SD of the peak, degrees: Herrington 2014. Shares in, can't tell, out, by hand: an error
    // of 5.2 / 1.645 = 3.161 is told from .8416 (firmly 1.645) errors off the limit of 10, so in below 7.34 (4.80) and
    // out above 12.66 (15.20). Peaks as read spread by the root of both squares, 6.000 and 6.257.
    ['30 healthy women', 8.4, 5.1, [0.43, 0.33, 0.24], [0.27, 0.13]],
    ['12 with pain', 16.8, 5.4, [0.07, 0.19, 0.75], [0.03, 0.6]],
  ] as const)('at 0.8 tells of %s as many as the spread of their peaks says', (_, mean, sd, sides, firm) => {
    const errorSd = 5.2 / 1.645;
    const readSd = Math.hypot(sd, errorSd);
    const shares = Object.fromEntries(grades.map((grade) => [grade, 0])) as Record<Grade, number>;
    const step = 0.002;
    for (let z = -8; z < 8; z += step) {
      const read = mean + (z + step / 2) * readSd;
      shares[gradeOf(normalCdf((10 - read) / errorSd), 0.8)] += normalCdf(z + step) - normalCdf(z);
    }
    const told = [
      shares.in + shares['probably-in'],
      shares['cant-tell'],
      shares.out + shares['probably-out'],
    ];
    told.forEach((share, i) => expect(share).toBeCloseTo(sides[i]!, 2));
    [shares.in, shares.out].forEach((share, i) => expect(share).toBeCloseTo(firm[i]!, 2));
  });

  it.each([-0.01, 1.01, NaN])('refuses %d', (chance) => {
    expect(() => gradeOf(chance, 0.8)).toThrow(RangeError);
  });
});

describe('sideOf(grade)', () => {
  it('is undecided for ‘can’t tell’ alone', () => {
    expect(grades.map(sideOf)).toEqual(['out', 'out', null, 'in', 'in']);
  });
});
