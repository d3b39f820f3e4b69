import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestBridgeMs, resample, uniformTimesMs } from '#core/signal/resample';

const gap = 9;

describe('uniformTimesMs(firstMs, lastMs, rateHz)', () => {
  it('runs from the first to the last observation', () => {
    // 25 Hz: 40 ms apart; 130 ms hold 3 of them.
    expect(Array.from(uniformTimesMs(20, 150, 25))).toEqual([20, 60, 100, 140]);
  });

  it('includes the last instant where it falls on the base', () => {
    expect(Array.from(uniformTimesMs(0, 100, 20))).toEqual([0, 50, 100]);
  });

  it('includes it in spite of rounding in the times', () => {
    // 3 frames at 30 Hz end at 66.666...; a float may be a hair before it.
    expect(uniformTimesMs(0, 66.66666666666, 30)).toHaveLength(3);
  });

  it('holds one sample where there is one observation', () => {
    expect(Array.from(uniformTimesMs(70, 70, 30))).toEqual([70]);
  });
});

describe('resample(timesMs, values, missing, baseMs, frameIntervalMs, gapCode)', () => {
  const at = (
    timesMs: number[],
    values: number[],
    missing: number[],
    baseMs: number[],
    frameIntervalMs = 40,
  ) =>
    resample(
      Float64Array.from(timesMs),
      values,
      Uint8Array.from(missing),
      Float64Array.from(baseMs),
      frameIntervalMs,
      gap,
    );

  it('interpolates linearly between uneven observations', () => {
    // At 30: 5 + (30 - 10) / (50 - 10) * (17 - 5) = 11; at 60: 17 + (60 - 50) / (75 - 50) * (7 - 17) = 13.
    const { values, missing } = at([10, 50, 75], [5, 17, 7], [0, 0, 0], [10, 30, 60, 75]);
    expect(Array.from(values)).toEqual([5, 11, 13, 7]);
    expect(Array.from(missing)).toEqual([0, 0, 0, 0]);
  });

  it('returns observations unchanged where they are on the base', () => {
    const { values } = at([0, 40, 80], [3.25, -1.5, 8], [0, 0, 0], [0, 40, 80]);
    expect(Array.from(values)).toEqual([3.25, -1.5, 8]);
  });

  it('bridges a hole of 0.1 s on top of the frame interval', () => {
    const { values, missing } = at([0, 140], [2, 16], [0, 0], [0, 70, 140]);
    expect(longestBridgeMs).toBe(100);
    expect(Array.from(values)).toEqual([2, 9, 16]);
    expect(Array.from(missing)).toEqual([0, 0, 0]);
  });

  it('marks a hole longer than that, and keeps the observations at its edges', () => {
    const { values, missing } = at([0, 141], [2, 16], [0, 0], [0, 70, 141]);
    expect(Array.from(values)).toEqual([2, 0, 16]);
    expect(Array.from(missing)).toEqual([0, gap, 0]);
  });

  it('bridges observations that do not count as if they were lost frames', () => {
    const { values, missing } = at([0, 40, 80], [4, 999, 12], [0, 3, 0], [0, 40, 80]);
    expect(Array.from(values)).toEqual([4, 8, 12]);
    expect(Array.from(missing)).toEqual([0, 0, 0]);
  });

  it('gives the reason of the observations that do not count where the hole is too long', () => {
    const { missing } = at(
      [0, 40, 80, 120, 160, 200],
      [4, 999, 999, 999, 999, 24],
      [0, 3, 3, 2, 2, 0],
      [0, 50, 100, 150, 200],
    );
    expect(Array.from(missing)).toEqual([0, 3, 3, 2, 0]);
  });

  it('marks what lies before the first and after the last observation', () => {
    const { values, missing } = at([100, 140], [6, 7], [0, 0], [60, 100, 140, 180]);
    expect(Array.from(values)).toEqual([0, 6, 7, 0]);
    expect(Array.from(missing)).toEqual([gap, 0, 0, gap]);
  });

  it('marks everything where nothing counts', () => {
    expect(Array.from(at([0, 40], [1, 2], [5, 5], [0, 20, 40]).missing)).toEqual([5, 5, 5]);
    expect(Array.from(at([], [], [], [0, 20]).missing)).toEqual([gap, gap]);
  });

  it('returns nothing for an empty base', () => {
    expect(at([0], [1], [0], []).values).toHaveLength(0);
  });

  const observations = fc.array(
    fc.record({
      stepMs: fc.integer({ min: 1, max: 220 }),
      value: fc.double({ min: -5000, max: 5000, noNaN: true }),
      missing: fc.constantFrom(0, 0, 0, 2),
    }),
    { minLength: 1, maxLength: 40 },
  );

  it('never leaves the range of the two observations around a sample, and marks every long hole', () => {
    fc.assert(
      fc.property(observations, fc.integer({ min: 10, max: 120 }), (seen, rateHz) => {
        const timesMs: number[] = [];
        for (const { stepMs } of seen) timesMs.push((timesMs.at(-1) ?? 0) + stepMs);
        const baseMs = Array.from(uniformTimesMs(timesMs[0]!, timesMs.at(-1)!, rateHz));
        const { values, missing } = at(
          timesMs,
          seen.map(({ value }) => value),
          seen.map((observation) => observation.missing),
          baseMs,
        );
        baseMs.forEach((atMs, i) => {
          const counts = (j: number) => seen[j]!.missing === 0;
          const before = timesMs.findLastIndex((timeMs, j) => timeMs <= atMs && counts(j));
          const after = timesMs.findIndex((timeMs, j) => timeMs >= atMs && counts(j));
          const bridged = before >= 0 && after >= 0 && timesMs[after]! - timesMs[before]! <= 140 + 1e-6;
          expect(missing[i] === 0).toBe(bridged);
          if (!bridged) return;
          const around = [seen[before]!.value, seen[after]!.value];
          const grain = 1e-9; // rounding of values up to 5000
          expect(values[i]).toBeGreaterThanOrEqual(Math.min(...around) - grain);
          expect(values[i]).toBeLessThanOrEqual(Math.max(...around) + grain);
        });
      }),
    );
  });
});
