import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rowTops, rowWindow } from '#features/review/screens/rowWindow';

describe('rowTops', () => {
  test('each row begins where the one before ends', () => {
    expect(rowTops([30, 50, 30])).toEqual([0, 30, 80, 110]);
  });
  test('a row that was never drawn gets the median height', () => {
    expect(rowTops([30, undefined, 50, 30])).toEqual([0, 30, 60, 110, 140]);
  });
  test('without any row drawn all begin at the top', () => {
    expect(rowTops([undefined, undefined])).toEqual([0, 0, 0]);
    expect(rowTops([])).toEqual([0]);
  });
});

describe('rowWindow', () => {
  const of = (rows: number) => rowTops(Array<number>(rows).fill(30));

  test('rows in sight are drawn with four to spare on both sides', () => {
    expect(rowWindow(of(75), 30 * 30, 42 * 30)).toEqual({ from: 26, to: 46 });
  });
  test('a row with one visible pixel counts as in sight', () => {
    expect(rowWindow(of(75), 30 * 30 - 1, 42 * 30 + 1)).toEqual({ from: 25, to: 47 });
  });
  test('a small table is drawn whole, wherever it is scrolled', () => {
    expect(rowWindow(of(16), 200, 230)).toEqual({ from: 0, to: 16 });
    expect(rowWindow(of(0), 0, 300)).toEqual({ from: 0, to: 0 });
  });
  test('far above and far below the table its first or last rows stay drawn', () => {
    expect(rowWindow(of(75), -5000, -4000)).toEqual({ from: 0, to: 16 });
    expect(rowWindow(of(75), 9000, 9500)).toEqual({ from: 59, to: 75 });
  });
  test('before any row was measured a few are drawn, so that there is something to measure', () => {
    const { from, to } = rowWindow(rowTops(Array<undefined>(75).fill(undefined)), 0, 300);
    expect(to - from).toBe(16);
  });

  test('whatever the heights, every row in sight is drawn, and no more than these plus the spare ones', () => {
    const heights = fc.array(fc.integer({ min: 20, max: 90 }), { minLength: 17, maxLength: 120 });
    fc.assert(
      fc.property(
        heights,
        fc.integer({ min: -500, max: 9000 }),
        fc.integer({ min: 1, max: 900 }),
        (each, at, high) => {
          const tops = rowTops(each);
          const { from, to } = rowWindow(tops, at, at + high);
          const seen = each
            .map((_, row) => row)
            .filter((row) => tops[row]! < at + high && tops[row + 1]! > at);
          expect(seen.every((row) => row >= from && row < to)).toBe(true);
          expect(to - from).toBeLessThanOrEqual(Math.max(16, seen.length + 8));
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeLessThanOrEqual(each.length);
          expect(to - from).toBeGreaterThanOrEqual(Math.min(16, each.length));
        },
      ),
    );
  });
});
