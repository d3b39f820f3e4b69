import { describe, expect, it } from 'vitest';
import { findTask } from '#core/exercises/exercises';
import { findRepetitions } from '#core/segmentation/findRepetitions';

/**
 * Where a movement starts and ends among what comes before and after it. All movements are straight lines, a sample every
 * 10 ms. An edge that is inferred from a straight line lies before the line begins: so it is put where the line begins,
 * to the sample.
 */
const rise = findTask('split-stance-sit-to-stand');
const dip = findTask('single-leg-squat');

type Corner = readonly [ms: number, value: number];

/** A curve of straight lines, from 0 until 5000 ms; level before the first corner and after the last. */
function lines(...corners: Corner[]): Float64Array {
  return Float64Array.from({ length: 501 }, (_, i) => {
    const ms = 10 * i;
    const next = corners.findIndex(([at]) => at >= ms);
    if (next < 0) return corners.at(-1)![1];
    const [toMs, to] = corners[next]!;
    const [fromMs, from] = corners[next - 1] ?? [toMs, to];
    return toMs === fromMs ? to : from + ((to - from) * (ms - fromMs)) / (toMs - fromMs);
  });
}

const timesMs = lines([0, 0], [5000, 5000]);
const level = lines([0, 0.4]);
const found = (task: typeof dip, excursion: Float64Array, shoulderHeight = level) =>
  findRepetitions(task, { timesMs, excursion, shoulderHeight, feet: [{ x: level, y: level }] });
const eventsOf = (...asked: Parameters<typeof found>) => found(...asked)[0]!.events;

const out: Corner[] = [
  [1000, 0],
  [2000, 1],
  [3000, 0],
];

describe('findRepetitions(task, signals) puts the edges of a movement at the trough beside it', () => {
  it.each<[what: string, before: Corner[], startMs: number]>([
    ['nothing', [], 1000],
    [
      'a little more bend, which is the trough',
      [
        [820, 0],
        [870, -0.05],
        [900, 0],
      ],
      870,
    ],
    [
      'hips lower before, with a rise of 0.04 between that ends the trough',
      [
        [700, -0.2],
        [900, 0.04],
        [950, 0],
      ],
      1000,
    ],
    [
      'hips lower before, with a rise of 0.02 between that does not',
      [
        [700, -0.2],
        [900, 0.02],
        [950, 0],
      ],
      700,
    ],
    [
      'hips lower before, and still for longer than 200 ms in between',
      [
        [700, -0.2],
        [780, 0],
      ],
      1000,
    ],
    [
      'hips lower before, and still for 200 ms in between',
      [
        [790, -0.2],
        [810, 0],
      ],
      790,
    ],
    [
      'hips that sink by no more than the points’ jitter in 200 ms',
      [
        [0, -0.0099],
        [990, 0],
      ],
      1000,
    ],
  ])('after %s, and before it in a film that runs backwards', (_, before, startMs) => {
    const excursion = lines(...before, ...out);
    expect(eventsOf(dip, excursion).startMs).toBeCloseTo(startMs, 6);
    expect(eventsOf(dip, excursion.toReversed()).endMs).toBeCloseTo(5000 - startMs, 6);
  });
});

describe('findRepetitions(task, signals) puts the far end where the movement is there for the last time', () => {
  const bottomMs = (between: number, second: number) =>
    eventsOf(dip, lines([1000, 0], [2000, 1], [2300, between], [2600, second], [3400, 0])).bottomMs!;
  it.each([
    ['between two, where it hardly came back', 0.8, 0.98, 2100, 2500],
    ['the second of two, between which it came back', 0.6, 0.98, 2590, 2610],
    ['the first of two, where the second is not as far', 0.6, 0.95, 1990, 2010],
  ])('%s', (_, between, second, fromMs, untilMs) => {
    expect(bottomMs(between, second)).toBeGreaterThanOrEqual(fromMs);
    expect(bottomMs(between, second)).toBeLessThanOrEqual(untilMs);
  });
});

describe('findRepetitions(task, signals) of movements that go with the third power of time', () => {
  /** From 1000 to 2000 ms, held until 2600 ms, and back until 3600 ms: as slow at the far end as anybody is. */
  const held = timesMs.map((ms) => {
    const missing = ms < 2000 ? (2000 - ms) / 1000 : Math.max(0, ms - 2600) / 1000;
    return Math.max(0, 1 - missing ** 3);
  });
  /** What a body at rest does meanwhile: lowest for one sample at 700 ms, then higher and higher. */
  const rest = (ms: number) => (ms < 700 ? 0.06 : ms === 700 ? -0.01 : 0.00002 * (ms - 700));
  /** One that leaves such a rest, so that nothing but its own course says when; the same backwards from 2000 ms on. */
  const drifting = timesMs.map((at) => {
    const ms = at < 2000 ? at : 4000 - at;
    return Math.max(0, (ms - 1000) / 1000) ** 3 + rest(ms);
  });

  it.each([1, 1.2])(
    'holds the far end from when it is reached until it is left, %d times as far',
    (times) => {
      const { topMs, topEndMs } = eventsOf(
        rise,
        held.map((value) => times * value),
      );
      expect(Math.abs(topMs! - 2000)).toBeLessThanOrEqual(10);
      expect(Math.abs(topEndMs! - 2600)).toBeLessThanOrEqual(10);
    },
  );

  it('starts and ends at the same time where all of it is 1.2 times as far, or lower', () => {
    const { startMs, endMs } = eventsOf(dip, drifting);
    expect(startMs).toBeGreaterThan(800);
    expect(startMs).toBeLessThan(1000);
    const changed = [drifting.map((value) => 1.2 * value), drifting.map((value) => value - 0.03)];
    for (const excursion of changed) {
      const other = eventsOf(dip, excursion);
      expect(other.startMs).toBeCloseTo(startMs, 6);
      expect(other.endMs).toBeCloseTo(endMs, 6);
    }
  });

  it('starts a rise at seat-off, between two samples, where the shoulders stay as high', () => {
    const { startMs, seatOffMs } = eventsOf(rise, drifting);
    expect(seatOffMs! % 10).toBeGreaterThan(0.1);
    expect(startMs).toBe(seatOffMs);
  });
});

describe('findRepetitions(task, signals) leaves out what both feet walk through', () => {
  it('up to the sample in which it is over', () => {
    // At rest again, below a quarter of its way, from 2750 ms on.
    const movedFrom = (ms: number) => {
      const x = timesMs.map((at) => (at >= ms ? 1 : 0));
      return findRepetitions(dip, {
        timesMs,
        excursion: lines(...out),
        shoulderHeight: level,
        feet: [{ x, y: level }],
      }).length;
    };
    expect(movedFrom(2750)).toBe(0);
    expect(movedFrom(2760)).toBe(1);
  });
});

describe('findRepetitions(task, signals) puts the start of a rise where the trunk begins to lean', () => {
  /** Shoulders at one height after seat-off; before it as given. */
  const startMs = (...shoulders: Corner[]) => eventsOf(rise, lines(...out), lines(...shoulders)).startMs;
  const endMs = (...shoulders: Corner[]) =>
    eventsOf(rise, lines(...out), lines(...shoulders).toReversed()).endMs;
  /** Of the movement, mirrored about 2000 ms, in a film that runs backwards from 4000 ms. */
  const both = (...shoulders: Corner[]) => {
    const mirrored = shoulders.map(([ms, value]): Corner => [ms + 1000, value]);
    return [startMs(...shoulders), 4000 - endMs(...mirrored)];
  };

  it.each<[what: string, shoulders: Corner[], expectedMs: number]>([
    [
      'of a lean in one go',
      [
        [700, 0.5],
        [1000, 0.4],
      ],
      700,
    ],
    [
      'before a pause, where the lean after it is too small for one',
      [
        [500, 0.5],
        [700, 0.41],
        [900, 0.41],
        [1000, 0.4],
      ],
      500,
    ],
    [
      'after a pause, where the lean after it is one',
      [
        [500, 0.5],
        [700, 0.42],
        [900, 0.42],
        [1000, 0.4],
      ],
      900,
    ],
    [
      'where it has slowed to less than 0.15 of its speed',
      [
        [500, 0.456],
        [900, 0.4],
        [1000, 0.3],
      ],
      900,
    ],
  ])('%s', (_, shoulders, expectedMs) => {
    for (const ms of both(...shoulders)) expect(Math.abs(ms - expectedMs)).toBeLessThanOrEqual(10);
  });

  it('before a slower part that has more than 0.15 of its speed', () => {
    const [slow] = both([500, 0.464], [900, 0.4], [1000, 0.3]);
    expect(slow).toBeLessThan(890);
  });

  it('no more than 2.5 s before seat-off', () => {
    const late: Corner[] = [
      [3400, 0],
      [4000, 1],
      [4600, 0],
    ];
    const { startMs, seatOffMs } = eventsOf(rise, lines(...late), lines([0, 3.4], [3400, 0]));
    expect(seatOffMs! - startMs).toBeGreaterThanOrEqual(2500);
    expect(seatOffMs! - startMs).toBeLessThanOrEqual(2510);
  });

  it('at seat-off where the shoulders stay as high, between two samples too', () => {
    const between = lines([1003, 0], [2003, 1], [3007, 0]);
    const { startMs, seatOffMs, seatContactMs, endMs } = eventsOf(rise, between);
    expect([startMs, endMs]).toEqual([seatOffMs, seatContactMs]);
  });

  it('not before the repetition before it, nor its end after the next one has begun', () => {
    const twice = lines([1000, 0], [1400, 1], [1800, 0], [2200, 0], [2600, 1], [3000, 0]);
    // Shoulders that only rise, and such that only sink.
    const [first] = found(rise, twice, timesMs);
    const [, second] = found(
      rise,
      twice,
      timesMs.map((ms) => -ms),
    );
    // Each leaves rest, and is back at it, at a quarter of its way.
    expect(first!.events.endMs).toBeCloseTo(2300, 6);
    expect(second!.events.startMs).toBeCloseTo(1700, 6);
  });
});

describe('findRepetitions(task, signals) of a single picture', () => {
  it('is cut, and loaded in that sample', () => {
    const one = Float64Array.of(0.9);
    const only = {
      timesMs: Float64Array.of(40),
      excursion: one,
      shoulderHeight: one,
      feet: [{ x: one, y: one }],
    };
    expect(findRepetitions(rise, only)).toMatchObject([
      { completeness: 'cut-at-start', loadedFrom: 0, loadedTo: 0, events: { startMs: 40, endMs: 40 } },
    ]);
  });

  it('and of two pictures ends with the second', () => {
    const two = Float64Array.of(0.1, 0.9);
    const still = { x: two, y: two.map(() => 0) };
    const both = {
      timesMs: Float64Array.of(0, 40),
      excursion: two,
      shoulderHeight: two,
      feet: [{ ...still, x: still.y }],
    };
    expect(findRepetitions(dip, both)).toMatchObject([
      { completeness: 'cut-at-end', loadedFrom: 0, loadedTo: 1, events: { endMs: 40 } },
    ]);
  });
});
