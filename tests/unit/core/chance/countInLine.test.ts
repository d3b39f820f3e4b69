import { range, sum } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countInLine, type CountInLine } from '#core/chance/countInLine';
import { countQuantile } from '#core/chance/countQuantile';
import { seededRandom } from '#core/seededRandom';
import { normalCdf } from '#core/statistics/normalCdf';

/** A set held against an inward limit of 10 alone, in which every repetition has the same own error. */
function inward(peaks: readonly number[], sharedSd: number, ownSd: number): CountInLine {
  return countInLine(
    peaks.map((most) => ({ most })),
    { most: 10 },
    { sharedSd, ownSds: peaks.map(() => ownSd) },
  );
}

const atLeast = ({ countChances }: CountInLine, count: number) => sum(countChances.slice(count));
const lowerTenth = ({ countChances }: CountInLine) => countQuantile(countChances, 0.1);
const times = (count: number, value: number) => Array<number>(count).fill(value);
/** What the docstring promises. */
const digits = 7;

/** The inward peaks of the built-in example, as measuring version 4 read them, and their 90 % bands. */
const example = [3.47, 5.65, 14.06, 4.52, 8.92, 17.3];
const exampleBands = [5.33, 4.78, 4.64, 5.57, 5.51, 4.44];

describe('countInLine(repetitions, limits, errors) tells a set as worked out beforehand', () => {
  it('two as far within as beyond, errors their own', () => {
    // q = Phi(1), Phi(-1) = .8413, .1587: none .1587 .8413, both the same.
    const { countChances, expected, low, high, mode } = inward([8, 12], 0, 2);
    [0.1335, 0.733, 0.1335].forEach((chance, k) => expect(countChances[k]).toBeCloseTo(chance, 4));
    expect({ low, high, mode }).toEqual({ low: 0, high: 2, mode: 1 });
    expect(expected).toBeCloseTo(1, 12);
  });

  it('ten alike with hardly an error of their own: all or none', () => {
    // Phi(2/3) with no own error at all. With an own sd of .01 the turn is blurred: five in a thousand sets fall between.
    const alike = inward(times(10, 8), 3, 0);
    expect(alike.countChances[10]).toBeCloseTo(0.7475, 4);
    expect(alike.countChances[0]).toBeCloseTo(0.2525, 4);
    expect(sum(alike.countChances.slice(1, 10))).toBe(0);
    const blurred = inward(times(10, 8), 3, 0.01);
    expect(Math.abs(blurred.countChances[10]! - 0.7475)).toBeLessThan(0.005);
    expect(Math.abs(blurred.countChances[0]! - 0.2525)).toBeLessThan(0.005);
  });

  it('the built-in example, most of the error shared', () => {
    const set = inward(example, 2.9, 1.2);
    expect(set).toMatchObject({ low: 2, high: 5, mode: 4 });
    expect(set.expected).toBeCloseTo(3.6, 2);
    expect(atLeast(set, 5)).toBeCloseTo(0.098, 3);
  });

  it('the same with less of it shared', () => {
    const set = inward(example, 2, 2.4);
    expect(set).toMatchObject({ low: 2, high: 5, mode: 4 });
    expect(set.expected).toBeCloseTo(3.6, 2);
  });

  it('the example’s repetitions one by one, each with its own band as its error', () => {
    const { chancesInLine } = countInLine(
      example.map((most) => ({ most })),
      { most: 10 },
      { sharedSd: 0, ownSds: exampleBands.map((band) => band / 1.645) },
    );
    const expected = [0.98, 0.93, 0.08, 0.95, 0.63, 0];
    expected.forEach((chance, i) => expect(chancesInLine[i]).toBeCloseTo(chance, 2));
  });

  it('four of six rather in line, the third and the sixth inward', () => {
    const { chancesInLine } = inward(example, 2.9, 1.2);
    const numbers = range(1, 7);
    expect(numbers.filter((number) => chancesInLine[number - 1]! >= 0.5)).toEqual([1, 2, 4, 5]);
    expect(numbers.filter((number) => chancesInLine[number - 1]! < 0.2)).toEqual([3, 6]);
  });

  it.each([
    // share in line, lower tenth, chance of 8 or more
    [[2, 3, 4, 4, 5, 3, 6, 4, 5, 4], 0.964, 9, 0.951],
    [[7, 8, 6, 9, 7, 8, 10, 7, 8, 9], 0.735, 1, 0.63],
    [[2, 3, 4, 14, 5, 3, 15, 4, 5, 4], 0.793, 8, 0.909],
  ])('ten repetitions %j', (peaks, share, tenth, eightOrMore) => {
    const set = inward(peaks, 2.9, 1.2);
    expect(set.expected / 10).toBeCloseTo(share, 3);
    expect(lowerTenth(set)).toBe(tenth);
    expect(atLeast(set, 8)).toBeCloseTo(eightOrMore, 3);
  });
});

describe('countInLine(repetitions, limits, errors) agrees with', () => {
  it('the binomial distribution where all have the same chance and nothing is shared', () => {
    // scipy 1.17.1: norm.ppf(0.3) and binom.pmf(k, 6, 0.3).
    const { countChances } = inward(times(6, 10 + 2 * 0.5244005127080407), 0, 2);
    const binomial = [0.117649, 0.302526, 0.324135, 0.18522, 0.059535, 0.010206, 0.000729];
    binomial.forEach((chance, k) => expect(countChances[k]).toBeCloseTo(chance, 12));
  });

  it('the sum of products over all outcomes where chances differ', () => {
    // q = .5 and Phi(1) = .841345: none .5 .158655 = .079328, both .5 .841345 = .420672, one the rest.
    const { countChances } = inward([10, 8], 0, 2);
    [0.079328, 0.5, 0.420672].forEach((chance, k) => expect(countChances[k]).toBeCloseTo(chance, 6));
  });

  it('one normal error of both parts, for a repetition by itself', () => {
    // Phi((10 - 8) / sqrt(3^2 + 4^2)) = Phi(.4) = .655422.
    expect(inward([8], 3, 4).chancesInLine[0]).toBeCloseTo(0.655422, 6);
    for (const [shared, own] of [[0.3, 5] as const, [2, 2] as const, [5, 0.02] as const]) {
      const expected = normalCdf((10 - 7.2) / Math.hypot(shared, own));
      expect(inward([7.2, 3], shared, own).chancesInLine[0]).toBeCloseTo(expected, 9);
    }
  });

  it.each([1, 2, 6, 25, 60])('the ranks of equal numbers: %d at the limit, both errors alike', (count) => {
    // Own errors are beyond the shared one or not, and of count + 1 equal normals that one has any rank alike.
    const { countChances } = inward(times(count, 10), 2, 2);
    for (const chance of countChances) expect(chance).toBeCloseTo(1 / (count + 1), 12);
  });

  it('the chance that two correlated normals have one sign', () => {
    // 1/4 + asin(r) / (2 pi), r = shared^2 / (shared^2 + own^2): Sheppard 1899 (from memory).
    for (const own of [0.01, 0.1, 0.5, 1, 3, 20]) {
      const r = 1 / (1 + own ** 2);
      expect(inward([10, 10], 1, own).countChances[2]).toBeCloseTo(0.25 + Math.asin(r) / (2 * Math.PI), 9);
    }
  });

  it('a fine sum over the shared error, for own errors of any size', () => {
    const [peaks, z] = [range(40).map((i) => 4 + ((i * 7.3) % 9)), 0.0005];
    const sorted = [...peaks].sort((a, b) => a - b);
    for (const ratio of [0.02, 0.06, 0.15, 0.19, 0.21, 0.5]) {
      const none = sum(range(-8, 8, z), (at) => {
        const all = sorted.reduce((product, peak) => {
          return product * (1 - normalCdf((10 - peak - 3 * at) / (3 * ratio)));
        }, 1);
        return (all * z * Math.exp((-at * at) / 2)) / Math.sqrt(2 * Math.PI);
      });
      expect(inward(peaks, 3, 3 * ratio).countChances[0]).toBeCloseTo(none, digits);
    }
  });

  it('errors drawn at random, with both limits', () => {
    const random = seededRandom(15);
    const repetitions = [
      { most: 8, least: -9 },
      { most: 11, least: -2 },
      { most: 3, least: -11.5 },
      { most: 9.5, least: -8 },
      { most: 2, least: -1 },
    ];
    const errors = { sharedSd: 2.5, ownSds: [1.2, 0.5, 2, 1, 3] };
    const { countChances, chancesInLine } = countInLine(repetitions, { most: 10, least: -10 }, errors);
    const draws = 100_000;
    const counts = times(6, 0);
    const inLine = times(5, 0);
    for (let draw = 0; draw < draws; draw++) {
      const shared = errors.sharedSd * random.gaussian();
      const kept = repetitions.map(({ most, least }, i) => {
        const own = () => errors.ownSds[i]! * random.gaussian();
        return most + shared + own() <= 10 && least + shared + own() >= -10;
      });
      kept.forEach((isKept, i) => (inLine[i]! += Number(isKept)));
      counts[kept.filter(Boolean).length]!++;
    }
    // Five standard errors of a share: one such test in 100 000 fails by chance.
    const near = (drawn: number, chance: number) =>
      expect(Math.abs(drawn / draws - chance)).toBeLessThan(5 * Math.sqrt((chance * (1 - chance)) / draws));
    counts.forEach((drawn, k) => near(drawn, countChances[k]!));
    inLine.forEach((drawn, i) => near(drawn, chancesInLine[i]!));
  });
});

describe('countInLine(repetitions, limits, errors) at its edges', () => {
  it('counts where nothing is in error, a value at its limit in line', () => {
    expect(inward([9.99, 10, 10.01], 0, 0)).toEqual({
      ...{ expected: 2, low: 2, high: 2, mode: 2 },
      ...{ chancesInLine: [1, 1, 0], countChances: [0, 0, 1, 0] },
    });
  });

  it('turns at once where only the shared error is left', () => {
    // 8 needs e <= 2, 12 needs e <= -2: both Phi(-2/3), none 1 - Phi(2/3), the rest one.
    const { countChances } = inward([8, 12], 3, 0);
    const both = normalCdf(-2 / 3);
    [both, 1 - 2 * both, both].forEach((chance, k) => expect(countChances[k]).toBeCloseTo(chance, 12));
  });

  it('holds both extremes against their limits', () => {
    // In line from e = -10 + 4 = -6 to 10 - 6 = 4, own error none: Phi(2) - Phi(-3).
    const [chance] = countInLine(
      [{ most: 6, least: -4 }],
      { most: 10, least: -10 },
      { sharedSd: 2, ownSds: [0] },
    ).chancesInLine;
    expect(chance).toBeCloseTo(normalCdf(2) - normalCdf(-3), 12);
  });

  it('counts an end as kept that has no limit, or nothing to hold against it', () => {
    const errors = { sharedSd: 2, ownSds: [1] };
    const both = { most: 9, least: -50 };
    const { chancesInLine } = countInLine([both], { most: 10 }, errors);
    expect(countInLine([{ most: 9 }], { most: 10, least: -10 }, errors).chancesInLine).toEqual(chancesInLine);
    expect(countInLine([both], {}, errors).chancesInLine[0]).toBeCloseTo(1, 12);
  });

  it('is a coin for each repetition or for all of them, as errors grow without end', () => {
    const owned = inward(times(10, 8), 0, 1e9);
    expect(owned.countChances[5]).toBeCloseTo(252 / 1024, 6);
    const shared = inward(times(10, 8), 1e9, 1);
    expect(shared.countChances[0]).toBeCloseTo(0.5, 6);
    expect(shared.countChances[10]).toBeCloseTo(0.5, 6);
  });

  it('calls the smallest of several counts the most likely that are equally likely', () => {
    expect(inward([10, 10], 2, 2).mode).toBe(0);
  });

  it('may expect less than the interval holds, where a few sets of a hundred fail altogether', () => {
    // Phi(2) = .977 of the sets are all in line, the others not at all: 9.77 of 10.
    const { expected, low, high } = inward(times(10, 4), 3, 0);
    expect([low, high]).toEqual([10, 10]);
    expect(expected).toBeCloseTo(9.772, 3);
  });

  it('may call a count the most likely that is rarer than a twentieth', () => {
    // 25 ranks alike, as above: 0 to 25 with 1 / 26 = .038 each.
    expect(inward(times(25, 10), 2, 2)).toMatchObject({ low: 1, high: 24, mode: 0 });
  });

  it('is surer of a set between two limits the wider the shared error: it is out', () => {
    const between = (sharedSd: number) => {
      const repetitions = times(10, 0).map((most) => ({ most, least: -1 }));
      return countInLine(repetitions, { most: 10, least: -10 }, { sharedSd, ownSds: times(10, 3) });
    };
    expect(between(0)).toMatchObject({ low: 10, high: 10 });
    expect(between(10)).toMatchObject({ low: 0, high: 10 });
    expect(between(1000)).toMatchObject({ low: 0, high: 0 });
  });

  it.each([
    [[], 1, [], 'A count needs at least one repetition.'],
    [[8, 9], 1, [1], 'Each repetition needs an own error: got 1 for 2.'],
    [[8], -1, [1], 'A standard deviation is 0 or above, got -1.'],
    [[8], 1, [-0.5], 'A standard deviation is 0 or above, got -0.5.'],
    [[8], Infinity, [1], 'Statistics need finite numbers, got Infinity.'],
    [[NaN], 1, [1], 'Statistics need finite numbers, got NaN.'],
  ])('refuses %j with errors %d, %j', (peaks, sharedSd, ownSds, message) => {
    const repetitions = peaks.map((most) => ({ most }));
    expect(() => countInLine(repetitions, { most: 10 }, { sharedSd, ownSds })).toThrow(
      new RangeError(message),
    );
  });
});

describe('countInLine(repetitions, limits, errors) for any set', () => {
  const degrees = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const anyRepetition = fc.record({
    most: degrees(-5, 25),
    least: degrees(-25, 5),
    ownSd: fc.oneof(fc.constant(0), degrees(0.01, 6)),
  });
  const anySharedSd = fc.oneof(fc.constant(0), degrees(0.01, 8));
  const anySet = fc.record({
    repetitions: fc.array(anyRepetition, { minLength: 1, maxLength: 25 }),
    limits: fc.record({ most: degrees(1, 30), least: degrees(-30, -1) }, { requiredKeys: [] }),
    sharedSd: anySharedSd,
  });
  type AnySet = typeof anySet extends fc.Arbitrary<infer Set> ? Set : never;
  const count = ({ repetitions, limits, sharedSd }: AnySet) =>
    countInLine(repetitions, limits, { sharedSd, ownSds: repetitions.map(({ ownSd }) => ownSd) });
  const closeTo = (got: readonly number[], expected: readonly number[]) =>
    got.forEach((chance, i) => expect(chance).toBeCloseTo(expected[i]!, 6));

  it('gives chances, of which the counts’ add up to 1 and to what is expected', () => {
    fc.assert(
      fc.property(anySet, (set) => {
        const { chancesInLine, countChances, expected } = count(set);
        for (const chance of [...chancesInLine, ...countChances]) {
          expect(chance).toBeGreaterThanOrEqual(0);
          expect(chance).toBeLessThanOrEqual(1);
        }
        expect(sum(countChances)).toBeCloseTo(1, 9);
        expect(sum(countChances, (chance, k) => chance * k)).toBeCloseTo(expected, 6);
      }),
    );
  });

  it('expects no more off its interval than the twentieth outside can carry', () => {
    // At least .95 of the sets have `low` or more, and at most .05 more than `high`.
    fc.assert(
      fc.property(anySet, (set) => {
        const { expected, low, high } = count(set);
        const { length } = set.repetitions;
        expect(low).toBeLessThanOrEqual(high);
        expect(expected).toBeGreaterThanOrEqual(0.95 * low - 1e-6);
        expect(expected).toBeLessThanOrEqual(high + 0.05 * (length - high) + 1e-6);
      }),
    );
  });

  it('does not depend on the order of the repetitions', () => {
    fc.assert(
      fc.property(anySet, (set) => {
        const turned = count({ ...set, repetitions: [...set.repetitions].reverse() });
        const { countChances, chancesInLine } = count(set);
        closeTo(turned.countChances, countChances);
        closeTo([...turned.chancesInLine].reverse(), chancesInLine);
      }),
    );
  });

  it('mirrors, shifts and scales with its values', () => {
    fc.assert(
      fc.property(anySet, degrees(-20, 20), degrees(0.1, 10), (set, by, factor) => {
        const { repetitions, limits, sharedSd } = set;
        const moved = (value: number | undefined) => (value === undefined ? undefined : by - factor * value);
        const mirrored = countInLine(
          repetitions.map(({ most, least }) => ({ most: moved(least), least: moved(most) })),
          { most: moved(limits.least), least: moved(limits.most) },
          { sharedSd: factor * sharedSd, ownSds: repetitions.map(({ ownSd }) => factor * ownSd) },
        );
        closeTo(mirrored.countChances, count(set).countChances);
      }),
    );
  });

  it('expects more where a limit is farther out', () => {
    fc.assert(
      fc.property(anySet, degrees(0, 10), (set, by) => {
        const { most, least } = set.limits;
        const farther = {
          ...(most === undefined ? {} : { most: most + by }),
          ...(least === undefined ? {} : { least: least - by }),
        };
        const [before, after] = [count(set), count({ ...set, limits: farther })];
        after.chancesInLine.forEach((chance, i) =>
          expect(chance).toBeGreaterThan(before.chancesInLine[i]! - 1e-6),
        );
        expect(after.low).toBeGreaterThanOrEqual(before.low);
        expect(after.high).toBeGreaterThanOrEqual(before.high);
      }),
    );
  });

  it('tells no narrower interval for more shared error, held against one limit', () => {
    fc.assert(
      fc.property(anySet, degrees(0, 6), ({ repetitions, sharedSd }, more) => {
        const limits = { most: 10 };
        const [before, after] = [sharedSd, sharedSd + more].map((sd) =>
          count({ repetitions, limits, sharedSd: sd }),
        );
        expect(after!.high - after!.low).toBeGreaterThanOrEqual(before!.high - before!.low);
      }),
    );
  });
});
