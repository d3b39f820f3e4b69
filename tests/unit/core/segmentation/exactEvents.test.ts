import { describe, expect, it } from 'vitest';
import { findTask } from '#core/exercises/exercises';
import {
  findRepetitions,
  longestShuffle,
  type FootPath,
  type FoundRepetition,
} from '#core/segmentation/findRepetitions';

const rise = findTask('split-stance-sit-to-stand');
const dip = findTask('single-leg-squat');

/** A sample every 10 ms for 5 s. */
const timesMs = Float64Array.from({ length: 501 }, (_, i) => 10 * i);
/** One sample: curves are read straight between two. */
const nearMs = 10;
/**
 * What has moved by less than 0.002 of the way counts as trembling: with the third power of time these are
 * 0.126 of the 1000 ms, so that a movement begins later by up to that, and ends earlier.
 */
const tremblingMs = 126 + nearMs;
/**
 * A lean ends where it has slowed to 0.15 of its greatest speed. The speed goes with the square of time: that is 0.387 of
 * the 400 ms from its end.
 */
const slowedMs = 155;

/**
 * A movement that leaves rest at 1000 ms with the third power of time, is at its far end at 2000 ms, and comes back in the
 * same way until 3000 ms: where it begins and ends is known exactly.
 */
const excursion = timesMs.map((timeMs) => {
  const share = timeMs < 2000 ? (timeMs - 1000) / 1000 : (3000 - timeMs) / 1000;
  return Math.max(0, share) ** 3;
});
/** Shoulders that sink from 600 ms until seat-off at 1000 ms, rise and sink with the hips, and are up again at 3400 ms. */
const shoulderHeight = timesMs.map((timeMs, i) => {
  const lean = timeMs <= 2000 ? (timeMs - 600) / 400 : (3400 - timeMs) / 400;
  return 0.5 - 0.1 * Math.min(1, Math.max(0, lean)) ** 3 + 0.5 * excursion[i]!;
});
const still: FootPath = { x: new Float64Array(501), y: new Float64Array(501) };
const signals = { timesMs, excursion, shoulderHeight, feet: [still, still] };
/** Times of a movement alone, and of one cut out of it. */
const between = (fromMs: number, untilMs: number) => {
  const [from, to] = [fromMs / 10, untilMs / 10 + 1];
  const cut = (values: Float64Array) => values.subarray(from, to);
  return {
    ...signals,
    timesMs: cut(timesMs),
    excursion: cut(excursion),
    shoulderHeight: cut(shoulderHeight),
  };
};
const near = (timeMs: number | null, expectedMs: number) =>
  expect(Math.abs(timeMs! - expectedMs)).toBeLessThanOrEqual(nearMs);
const within = (timeMs: number | null, fromMs: number, untilMs: number) => {
  expect(timeMs).toBeGreaterThanOrEqual(fromMs);
  expect(timeMs).toBeLessThanOrEqual(untilMs);
};

describe('findRepetitions(task, signals) of a movement whose times are known exactly', () => {
  it('finds start, turning point and end of a dip, and its loaded samples', () => {
    const [one, ...more] = findRepetitions(dip, signals);
    expect(more).toEqual([]);
    const { startMs, bottomMs, endMs, ...others } = one!.events;
    within(startMs, 1000, 1000 + tremblingMs);
    near(bottomMs, 2000);
    within(endMs, 3000 - tremblingMs, 3000);
    expect(others).toEqual({ seatOffMs: null, topMs: null, topEndMs: null, seatContactMs: null });
    expect(one!.completeness).toBe('complete');
    expect(one!.loadedFrom).toBe(Math.round(startMs / 10));
    expect(one!.loadedTo).toBe(Math.round(endMs / 10));
  });

  it('finds lean, seat-off, contact and straightening of a rise', () => {
    const [one] = findRepetitions(rise, signals);
    const { startMs, seatOffMs, topMs, topEndMs, bottomMs, seatContactMs, endMs } = one!.events;
    near(startMs, 600 + slowedMs);
    within(seatOffMs, 1000, 1000 + tremblingMs);
    within(seatContactMs, 3000 - tremblingMs, 3000);
    near(endMs, 3400 - slowedMs);
    expect(bottomMs).toBeNull();
    // The far end is one moment, to either side of which both are alike.
    near(topMs! + topEndMs!, 4000);
    expect(topMs!).toBeLessThanOrEqual(2000);
    expect(topEndMs!).toBeGreaterThanOrEqual(2000);
  });

  it('gives a rise no lean where the shoulders do not sink', () => {
    const flat = { ...signals, shoulderHeight: excursion.map((value) => 0.5 + value) };
    const { startMs, seatOffMs, seatContactMs, endMs } = findRepetitions(rise, flat)[0]!.events;
    expect([startMs, endMs]).toEqual([seatOffMs, seatContactMs]);
  });

  it('starts one that is cut with its first sample, and ends one that is cut with its last', () => {
    const [late] = findRepetitions(rise, between(1800, 5000));
    expect(late!.completeness).toBe('cut-at-start');
    expect(late!.events).toMatchObject({ startMs: 1800, seatOffMs: null });
    within(late!.events.seatContactMs, 3000 - tremblingMs, 3000);
    near(late!.events.endMs, 3400 - slowedMs);
    expect(late!.loadedFrom).toBe(0);

    const [early] = findRepetitions(rise, between(0, 2200));
    expect(early!.completeness).toBe('cut-at-end');
    expect(early!.events).toMatchObject({ endMs: 2200, seatContactMs: null });
    near(early!.events.startMs, 600 + slowedMs);
    within(early!.events.seatOffMs, 1000, 1000 + tremblingMs);
    expect(early!.loadedTo).toBe(220);
  });

  it('ends the top where it is first left by three tenths, whatever comes afterwards, and before it alike', () => {
    // Up by 2000 ms, at the top until 2500 ms, left with the third power of time down to a half at 3000 ms, back up to
    // 0.85 at 3400 ms, and down by 4200 ms.
    const line = (timeMs: number, fromMs: number, toMs: number, from: number, to: number) =>
      from + ((timeMs - fromMs) / (toMs - fromMs)) * (to - from);
    const bouncing = timesMs.map((timeMs) => {
      if (timeMs < 1000 || timeMs > 4200) return 0;
      if (timeMs < 2000) return line(timeMs, 1000, 2000, 0, 1);
      if (timeMs < 2500) return 1;
      if (timeMs < 3000) return 1 - 4 * ((timeMs - 2500) / 1000) ** 3;
      if (timeMs < 3400) return line(timeMs, 3000, 3400, 0.5, 0.85);
      return line(timeMs, 3400, 4200, 0.85, 0);
    });
    const top = (curve: Float64Array) => findRepetitions(rise, { ...signals, excursion: curve })[0]!.events;
    near(top(bouncing).topEndMs, 2500);
    near(top(bouncing.toReversed()).topMs, 2500);
  });

  it('calls one partial that does not reach three quarters of the way, and leaves out one below 0.45', () => {
    const kinds = (share: number) =>
      findRepetitions(dip, { ...signals, excursion: excursion.map((value) => share * value) }).map(
        ({ completeness, events }) => [completeness, events.bottomMs === null],
      );
    expect(kinds(0.76)).toEqual([['complete', false]]);
    expect(kinds(0.74)).toEqual([['partial', true]]);
    expect(kinds(0.46)).toEqual([['partial', true]]);
    expect(kinds(0.44)).toEqual([]);
  });

  it('gives a partial rise no top, and the times of its seat-off and contact', () => {
    const partial = { ...signals, excursion: excursion.map((value) => 0.6 * value) };
    const [{ completeness, events }] = findRepetitions(rise, partial) as [FoundRepetition];
    expect(completeness).toBe('partial');
    expect(events).toMatchObject({ topMs: null, topEndMs: null });
    within(events.seatOffMs, 1000, 1000 + 1.2 * tremblingMs);
    within(events.seatContactMs, 3000 - 1.2 * tremblingMs, 3000);
  });

  it('leaves out what both feet walk through, in either direction, and keeps what one of them does', () => {
    const moved = (byLegs: number, along: 'x' | 'y'): FootPath => ({
      ...still,
      [along]: timesMs.map((timeMs) => (timeMs > 2000 ? byLegs : 0)),
    });
    const count = (...feet: FootPath[]) => findRepetitions(dip, { ...signals, feet }).length;
    for (const along of ['x', 'y'] as const) {
      const walking = moved(longestShuffle + 0.01, along);
      expect(count(walking, walking)).toBe(0);
      expect(count(walking, still)).toBe(1);
      const shuffling = moved(longestShuffle, along);
      expect(count(shuffling, shuffling)).toBe(1);
    }
    // Before the movement anybody may walk.
    const came = { ...still, x: timesMs.map((timeMs) => (timeMs < 500 ? 3 : 0)) };
    expect(count(came, came)).toBe(1);
  });

  it('puts the turning point of one that is held in the middle of the hold', () => {
    // The way out until 2000 ms, held until 2600 ms, and back.
    const held = timesMs.map((timeMs) => {
      const at = timeMs < 2000 ? timeMs : timeMs < 2600 ? 2000 : timeMs - 600;
      return excursion[Math.round(at / 10)] ?? 0;
    });
    const { bottomMs, endMs } = findRepetitions(dip, { ...signals, excursion: held })[0]!.events;
    within(bottomMs, 2200, 2400);
    within(endMs, 3600 - tremblingMs, 3600);
  });
});
