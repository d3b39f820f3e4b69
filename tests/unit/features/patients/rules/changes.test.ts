import { describe, expect, it } from 'vitest';
import { ownError } from '#core/reliability/ownError';
import { buildCourse } from '#features/patients/rules/buildCourse';
import { sideChanges, trackChanges } from '#features/patients/rules/changes';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { asked, measured, session } from '../../../../support/measuredSession';

const published = ownError([]);
const around = (deg: number) => [deg - 1, deg, deg + 1];
const may = (day: number) => `2026-05-${String(day).padStart(2, '0')}`;
/** One set a day; day of May and mean. */
const days = (...sets: [day: number, deg: number][]) =>
  sets.map(([day, deg]) => session(may(day), [measured({ peaks: around(deg) })]));
const changeIn = (sessions: ListedSession[]) => trackChanges(buildCourse(sessions, []), published)[0]!;
const means = (sets: readonly { peak: { meanDeg: number } }[]) => sets.map(({ peak }) => peak.meanDeg);

describe('trackChanges(course, error)', () => {
  it('compares as many days at both ends, three at most', () => {
    const four = changeIn(days([1, 10], [3, 9], [8, 5], [10, 4]));
    expect([means(four.earlier), means(four.later)]).toEqual([
      [10, 9],
      [5, 4],
    ]);
    const seven = changeIn(days([1, 10], [3, 9], [4, 8], [6, 7], [8, 6], [9, 5], [11, 4]));
    expect([means(seven.earlier), means(seven.later)]).toEqual([
      [10, 9, 8],
      [6, 5, 4],
    ]);
    // 1.96 x 3.01 x sqrt(2/3) = 4.8 degrees with three days at each end (Munro 2012).
    expect(seven.change).toMatchObject({
      kind: 'compared',
      change: { difference: -4, verdict: 'within-error' },
    });
  });

  it('keeps the days of one end within two weeks', () => {
    const { earlier, later } = changeIn(days([1, 10], [2, 9], [20, 8], [21, 5], [29, 4], [31, 3]));
    expect([means(earlier), means(later)]).toEqual([
      [10, 9],
      [5, 4, 3],
    ]);
  });

  it('takes the first set of each day, since a later one is done by a tired leg', () => {
    const sets = (deg: number) => [measured({ peaks: around(deg) }), measured({ peaks: around(deg + 8) })];
    const { days: found } = changeIn([session(may(1), sets(5)), session(may(4), sets(6))]);
    expect(means(found)).toEqual([5, 6]);
  });

  it('takes tests only where there are tests of two days', () => {
    const done = (day: number, deg: number, isTest: boolean) =>
      session(may(day), [measured({ peaks: around(deg), asked: { ...asked, isTest } })]);
    const training = [done(2, 3, false), done(9, 2, false)];
    const one = changeIn([...training, done(3, 9, true)]);
    expect([means(one.days), one.leftOut]).toEqual([[3, 2], 1]);
    const two = changeIn([...training, done(3, 9, true), done(8, 7, true)]);
    expect([means(two.days), two.leftOut]).toEqual([[9, 7], 0]);
  });

  it('leaves out days unlike the newest, and says how the first of all differs', () => {
    const lower = measured({ peaks: around(12), asked: { ...asked, seatHeightCm: 40 } });
    const { leftOut, unlikeFirst, change } = changeIn([session(may(1), [lower]), ...days([5, 8])]);
    expect([leftOut, change]).toEqual([1, null]);
    expect(unlikeFirst?.comparison.differences.map(({ condition }) => condition)).toEqual(['seatHeightCm']);
  });

  it('has nothing to say of sets without a mean', () => {
    expect(
      trackChanges(buildCourse([session(may(1), [measured({ peaks: [3, null] })])], []), published),
    ).toEqual([]);
  });
});

describe('sideChanges(course)', () => {
  const both = (day: number, left: number, right: number, change = {}) =>
    session(may(day), [
      measured({ side: 'left', peaks: around(left), ...change }),
      measured({ side: 'right', peaks: around(right), ...change }),
    ]);

  it('compares the legs over the last three days with both done alike', () => {
    const sessions = [both(1, 30, 0), both(2, 9, 3), both(3, 10, 3), both(5, 11, 3), ...days([6, 20])];
    const [found] = sideChanges(buildCourse(sessions, []));
    expect(found?.difference).toMatchObject({ days: 3, leftDeg: 10, rightDeg: 3 });
    expect(found?.atMs).toBe(Date.parse('2026-05-05T08:00:00.000Z'));
  });

  it('leaves out days unlike the last one, and days with one leg', () => {
    const lower = { asked: { ...asked, seatHeightCm: 40 } };
    const found = sideChanges(buildCourse([both(1, 9, 9, lower), both(2, 10, 3)], []));
    expect(found[0]?.difference).toMatchObject({ days: 1, leftDeg: 10 });
    expect(sideChanges(buildCourse(days([6, 20]), []))).toEqual([]);
  });
});
