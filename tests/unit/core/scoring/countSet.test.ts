import { describe, expect, it } from 'vitest';
import { countInLine } from '#core/chance/countInLine';
import { defaultLimits } from '#core/protocol/limits';
import { countSet, type JudgedExtremes } from '#core/scoring/countSet';
import { kneeJudged } from '../../../support/kneeJudgement';

const ninety = 1.645;
const moment = { sample: 3, timeMs: 120 };

/** A repetition whose knee went so far inward, with these two standard deviations of its error. */
function knee(inwardDeg: number, sharedSd: number, ownSd: number, outwardDeg = 0): JudgedExtremes {
  const errors = { band: ninety * Math.hypot(sharedSd, ownSd), ownBand: ninety * ownSd, ...moment };
  const max = { value: inwardDeg, ...errors };
  return {
    ranges: { 'knee-angle': { min: { value: outwardDeg, ...errors }, max } },
    judgement: kneeJudged({ verdict: 'cant-tell', worst: max }),
  };
}

describe('countSet(repetitions, limits)', () => {
  it('is what countInLine gives where all bands are alike', () => {
    const [inward, outward] = [
      [3.47, 5.65, 14.06, 4.52, 8.92, 17.3],
      [-1, -9, 0, -12, -2, 0],
    ] as const;
    const plain = countInLine(
      inward.map((most, i) => ({ most, least: outward[i]! })),
      defaultLimits['knee-angle'],
      { sharedSd: 2.9, ownSds: inward.map(() => 1.2) },
    );
    const set = countSet(
      inward.map((deg, i) => knee(deg, 2.9, 1.2, outward[i])),
      defaultLimits,
    )!;
    expect(set.expected).toBeCloseTo(plain.expected, 6);
    expect([set.low, set.high, set.mode]).toEqual([plain.low, plain.high, plain.mode]);
    set.chancesInLine.forEach((chance, i) => expect(chance).toBeCloseTo(plain.chancesInLine[i]!, 6));
  });

  it('lets one error move all repetitions, each by as much as its own band says', () => {
    // Both are one of their shared standard deviations within: they fail together, with Phi(-1) = .1587.
    const { countChances } = countSet([knee(8, 2, 0, 90), knee(5, 5, 0, 90)], defaultLimits)!;
    expect(countChances[0]).toBeCloseTo(0.1587, 4);
    expect(countChances[1]).toBeCloseTo(0, 6);
    expect(countChances[2]).toBeCloseTo(0.8413, 4);
  });

  it('knows for sure what has no error', () => {
    expect(countSet([knee(9, 0, 0), knee(11, 0, 0)], defaultLimits)!.countChances).toEqual([
      expect.closeTo(0, 9),
      expect.closeTo(1, 9),
      expect.closeTo(0, 9),
    ]);
  });

  it('takes a band as shared where its own part is not known', () => {
    const unknown = (deg: number): JudgedExtremes => {
      const max = { value: deg, band: 4, ...moment };
      return {
        ranges: { 'knee-angle': { max } },
        judgement: kneeJudged({ verdict: 'cant-tell', worst: max }),
      };
    };
    const { countChances } = countSet([unknown(10), unknown(10)], defaultLimits)!;
    expect(countChances).toEqual([expect.closeTo(0.5, 6), expect.closeTo(0, 6), expect.closeTo(0.5, 6)]);
  });

  it('counts a repetition by the measure that its verdict rests on', () => {
    const lean = { value: 30, band: 2, ownBand: 2, ...moment };
    const { ranges, judgement } = knee(0, 1, 1);
    const judged = {
      measure: 'trunk-lean',
      verdict: 'out',
      chanceInLine: 0,
      reason: null,
      end: 'most',
    } as const;
    const leaning: JudgedExtremes = {
      ranges: { ...ranges, 'trunk-lean': { min: lean, max: lean } },
      judgement: {
        ...judgement,
        decidedBy: 'trunk-lean',
        measures: [...judgement.measures, { ...judged, extreme: lean }],
      },
    };
    const limits = { ...defaultLimits, 'trunk-lean': { most: 10 } };
    expect(countSet([leaning, knee(0, 1, 1)], limits)).toMatchObject({ low: 1, high: 1, mode: 1 });
  });

  it('leaves out what was not measured, and is null where nothing was', () => {
    const unseen: JudgedExtremes = {
      ranges: {},
      judgement: kneeJudged({ verdict: 'not-measured', reason: 'view-turned' }),
    };
    expect(countSet([unseen, knee(0, 1, 1)], defaultLimits)!.chancesInLine).toHaveLength(1);
    expect(countSet([unseen], defaultLimits)).toBeNull();
  });
});
