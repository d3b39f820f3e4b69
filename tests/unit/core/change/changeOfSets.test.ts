import { describe, expect, it } from 'vitest';
import { changeOfSets, courseOfTests, type MeasuredSet } from '#core/change/changeOfSets';
import type { SetConditions } from '#core/conditions/setConditions';
import { conditionsOf, unlike } from '../../../support/setConditions';

const set = (day: number, value: number, given: Partial<SetConditions> = {}): MeasuredSet => ({
  day,
  value,
  conditions: conditionsOf(given),
});
const sem = 3.01;

describe('changeOfSets(earlier, later, sem)', () => {
  const then = [set(0, 12.2), set(2, 13.9), set(4, 13.5)];

  it('compares the means of sets that are alike', () => {
    const result = changeOfSets(then, [set(21, 7.1), set(23, 8.3), set(25, 8.3)], sem);
    expect(result).toMatchObject({ kind: 'compared', change: { verdict: 'lower' }, notNoted: [] });
  });

  it('counts the sets of one day as one', () => {
    // (7.1 + 9.1) / 2 = 8.1; one day each: 8.34, and 8.1 - 13.2 = -5.1.
    const result = changeOfSets([set(0, 13.2)], [set(21, 7.1), set(21, 9.1)], sem);
    expect(result).toMatchObject({
      kind: 'compared',
      change: { later: { mean: 8.1, count: 1 }, verdict: 'within-error' },
    });
  });

  it.each(unlike)('compares nothing where one set has %j', (given) => {
    const result = changeOfSets(then, [set(21, 7), set(23, 8, given)], sem);
    expect(result.kind).toBe('unlike');
    expect(result).not.toHaveProperty('change');
  });

  it('names what was noted of no set', () => {
    const bare = { footwear: null };
    expect(changeOfSets([set(0, 9, bare)], [set(9, 8, bare)], sem)).toMatchObject({ notNoted: ['footwear'] });
  });
});

describe('courseOfTests(sets, sem)', () => {
  const falling = [14, 13, 11, 12, 9, 8];

  it('has a mean a week and the slope of weightedSlope.test.ts', () => {
    const { weeks, slope, leftOut, trainingSets } = courseOfTests(
      falling.map((value, week) => set(7 * week, value)),
      sem,
    );
    expect(weeks.map(({ week, mean }) => [week, mean])).toEqual(falling.map((value, week) => [week, value]));
    expect(slope).toMatchObject({ slope: expect.closeTo(-1.171, 3) as number, isBeyondError: false });
    expect([leftOut, trainingSets]).toEqual([[], 0]);
  });

  it('is beyond error with three days of tests a week', () => {
    const sets = falling.flatMap((value, week) => [0, 2, 4].map((day) => set(7 * week + day, value)));
    expect(courseOfTests(sets, sem)).toMatchObject({ slope: { isBeyondError: true } });
    const oneDay = sets.map((each) => ({ ...each, day: 7 * Math.floor(each.day / 7) }));
    expect(courseOfTests(oneDay, sem)).toMatchObject({ slope: { isBeyondError: false } });
  });

  it('leaves out training, and tests unlike the newest, saying so', () => {
    const result = courseOfTests(
      [
        set(0, 20, { seatHeightCm: 50 }),
        set(7, 14),
        set(8, 3, { isTest: false, feedback: 'every-repetition' }),
        set(14, 13),
        set(21, 12),
      ],
      sem,
    );
    expect(result.weeks).toEqual([
      { week: 0, mean: 14, days: 1 },
      { week: 1, mean: 13, days: 1 },
      { week: 2, mean: 12, days: 1 },
    ]);
    expect(result.trainingSets).toBe(1);
    expect(result.leftOut).toMatchObject([
      { day: 0, comparison: { differences: [{ condition: 'seatHeightCm' }] } },
    ]);
  });

  it('has no slope below three weeks, and nothing of nothing', () => {
    expect(courseOfTests([set(0, 9), set(3, 8), set(7, 7)], sem).slope).toBeNull();
    expect(courseOfTests([], sem)).toEqual({ weeks: [], slope: null, leftOut: [], trainingSets: 0 });
  });
});
