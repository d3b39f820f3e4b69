import { groups, mean, rollups } from 'd3-array';
import { compareAll, compareConditions, type ConditionComparison } from '../conditions/compareConditions';
import type { ConditionId, SetConditions } from '../conditions/setConditions';
import { weightedSlope, type WeightedSlope } from '../statistics/weightedSlope';
import { meanChange, type MeanChange } from './meanChange';

/** What was measured of a set, for example its mean peak, and under what. */
export interface MeasuredSet {
  /** Whole days from any first day. */
  day: number;
  value: number;
  conditions: SetConditions;
}

export type ChangeOfSets =
  | { kind: 'unlike'; comparison: ConditionComparison }
  | { kind: 'compared'; change: MeanChange; notNoted: ConditionId[] };

/**
 * Whether sets changed from then to now; not compared where the conditions of any differ from the first one's. Sets of
 * one day count as one, their mean: they share the errors of that day.
 *
 * @param sem  see `meanChange`
 * @throws  RangeError as `meanChange`
 */
export function changeOfSets(
  earlier: readonly MeasuredSet[],
  later: readonly MeasuredSet[],
  sem: number,
): ChangeOfSets {
  const change = meanChange(dayMeans(earlier), dayMeans(later), sem);
  const comparison = compareAll([...earlier, ...later].map(({ conditions }) => conditions))!;
  return comparison.differences.length > 0
    ? { kind: 'unlike', comparison }
    : { kind: 'compared', change, notNoted: comparison.notNoted };
}

/** A week's tests in one value, the mean of its days. */
export interface CourseWeek {
  /** 0 is the week that begins with the first test. */
  week: number;
  mean: number;
  days: number;
}

export interface CourseOfTests {
  weeks: CourseWeek[];
  /** Per week; null below three weeks with tests. */
  slope: WeightedSlope | null;
  /** Tests that are unlike the newest one, which are not in it. */
  leftOut: { day: number; comparison: ConditionComparison }[];
  /** Sets of training, which are not in it either: with feedback they show what somebody can do, not what is kept. */
  trainingSets: number;
}

/**
 * The course over weeks of the tests that are like the newest one, a mean a week weighted by its number of days with tests.
 *
 * @param sets  in any order
 * @param sem  standard error of measurement of one set between days, above 0
 */
export function courseOfTests(sets: readonly MeasuredSet[], sem: number): CourseOfTests {
  const tests = sets.filter(({ conditions }) => conditions.isTest).sort((a, b) => a.day - b.day);
  const newest = tests.at(-1);
  const compared = tests.map((test) => ({
    ...test,
    comparison: compareConditions(test.conditions, newest!.conditions),
  }));
  const alike = compared.filter(({ comparison }) => comparison.differences.length === 0);
  const firstDay = alike[0]?.day ?? 0;
  const weeks = groups(alike, ({ day }) => Math.floor((day - firstDay) / 7)).map(([week, ofWeek]) => {
    const days = dayMeans(ofWeek);
    return { week, mean: mean(days)!, days: days.length };
  });
  return {
    weeks,
    slope: weightedSlope(
      weeks.map(({ week, mean, days }) => ({ x: week, y: mean, sd: sem / Math.sqrt(days) })),
    ),
    leftOut: compared
      .filter(({ comparison }) => comparison.differences.length > 0)
      .map(({ day, comparison }) => ({ day, comparison })),
    trainingSets: sets.length - tests.length,
  };
}

function dayMeans(sets: readonly MeasuredSet[]): number[] {
  return rollups(
    sets,
    (ofDay) => mean(ofDay, ({ value }) => value)!,
    ({ day }) => day,
  ).map(([, value]) => value);
}
