import { calendarDay } from '#core/calendarDay';
import {
  changeOfSets,
  courseOfTests,
  type ChangeOfSets,
  type CourseOfTests,
  type MeasuredSet,
} from '#core/change/changeOfSets';
import { sideDifference, type LegAngle, type SideDifference } from '#core/change/sideDifference';
import { compareConditions, type ConditionComparison } from '#core/conditions/compareConditions';
import type { TaskId } from '#core/exercises/exercises';
import type { Side } from '#core/protocol/side';
import { semOfDay, type OwnError } from '#core/reliability/ownError';
import type { SetPeak } from '#core/scoring/findSetPeak';
import type { Course, CourseSet, CourseTrack } from './buildCourse';

/** Days at each end of the course whose means are compared: three show changes from 4.8° on, one from 8.3° on. */
const daysAtEnds = 3;
/** The days of one end are at most so far apart. Our choice, no source. */
const endDays = 14;
/** Days with both legs, of the latest, from which the sides are compared. */
const daysOfSides = 3;

/** A set with a mean of its peaks. */
export type PeakSet = CourseSet & { peak: SetPeak };

/** How one leg does one exercise, first days against last days. */
export interface TrackChange {
  task: TaskId;
  side: Side;
  /** One set a day, oldest first: those that are like the newest one. */
  days: PeakSet[];
  /** Of these the first days that are compared; none with a single day. */
  earlier: PeakSet[];
  /** ... and the last. */
  later: PeakSet[];
  /** Null with one day. */
  change: ChangeOfSets | null;
  /** Error of one day to reckon with, degrees. */
  semDeg: number;
  /** Days that are unlike the newest one, and not in it. */
  leftOut: number;
  /** The first day, where it is one of those. */
  unlikeFirst: { atMs: number; comparison: ConditionComparison } | null;
  /** Over weeks; null without a test. */
  tests: CourseOfTests | null;
}

/** Left against right in one exercise. */
export interface SideChange {
  task: TaskId;
  /** Of the last day with both legs, ms since 1970. */
  atMs: number;
  difference: SideDifference;
}

/**
 * What changed in each exercise and leg: the mean of the first days against that of the last, as many at both ends.
 *
 * Of each day its first set, since a later one is done by a tired leg; where there are tests of two days, tests only,
 * since a set with feedback shows what somebody can do, not what is kept.
 */
export function trackChanges(course: Course, error: OwnError): TrackChange[] {
  return course.panels.flatMap(({ task, tracks }) =>
    tracks.flatMap((track) => trackChange(task, track, error) ?? []),
  );
}

function trackChange(task: TaskId, { side, sets }: CourseTrack, error: OwnError): TrackChange | null {
  const withPeaks = sets.filter(hasPeak);
  const tests = withPeaks.filter(({ conditions }) => conditions.isTest);
  const testDays = firstOfEachDay(tests);
  const firsts = testDays.length > 1 ? testDays : firstOfEachDay(withPeaks);
  const newest = firsts.at(-1);
  if (newest === undefined) return null;
  const days = firsts.filter((set) => isAlike(set, newest));
  const atEnds = Math.min(daysAtEnds, Math.floor(days.length / 2));
  const isNear = (one: PeakSet, other: PeakSet) => Math.abs(dayOf(one) - dayOf(other)) < endDays;
  const earlier = days.slice(0, atEnds).filter((set) => isNear(set, days[0]!));
  const later = days.slice(-Math.max(1, atEnds)).filter((set) => isNear(set, newest));
  const semDeg = semOfDay(error, Math.max(...[...earlier, ...later].map(({ peak }) => peak.semDeg)));
  const first = firsts[0]!;
  return {
    task,
    side,
    days,
    earlier,
    later,
    change: atEnds === 0 ? null : changeOfSets(earlier.map(measuredSet), later.map(measuredSet), semDeg),
    semDeg,
    leftOut: firsts.length - days.length,
    unlikeFirst: isAlike(first, newest)
      ? null
      : { atMs: first.atMs, comparison: compareConditions(first.conditions, newest.conditions) },
    tests: tests.length === 0 ? null : courseOfTests(withPeaks.map(measuredSet), semDeg),
  };
}

/**
 * Left against right in each exercise, over the latest days with both legs done alike.
 *
 * How much of a set's error is from how the body was turned is not kept with it, so all of it counts as such: then it
 * adds up between the legs, and only a larger difference counts as one.
 */
export function sideChanges({ panels }: Course): SideChange[] {
  return panels.flatMap(({ task, tracks }) => {
    const firstsOf = (side: Side) =>
      firstOfEachDay((tracks.find((track) => track.side === side)?.sets ?? []).filter(hasPeak));
    const rights = new Map(firstsOf('right').map((set) => [dayOf(set), set]));
    const pairs = firstsOf('left').flatMap((left) => {
      const right = rights.get(dayOf(left));
      return right === undefined || !isAlike(left, right, ['side']) ? [] : [{ left, right }];
    });
    const last = pairs.at(-1);
    if (last === undefined) return [];
    const days = pairs.filter(({ left }) => isAlike(left, last.left)).slice(-daysOfSides);
    const legs = days.map(({ left, right }) => ({ left: legAngle(left), right: legAngle(right) }));
    return [{ task, atMs: last.left.atMs, difference: sideDifference(legs, 'same') }];
  });
}

function hasPeak(set: CourseSet): set is PeakSet {
  return set.peak !== null;
}

function isAlike(
  one: CourseSet,
  other: CourseSet,
  except?: Parameters<typeof compareConditions>[2],
): boolean {
  return compareConditions(one.conditions, other.conditions, except).differences.length === 0;
}

function firstOfEachDay(sets: readonly PeakSet[]): PeakSet[] {
  return sets.filter((set, index) => index === 0 || dayOf(set) !== dayOf(sets[index - 1]!));
}

function dayOf({ atMs }: CourseSet): number {
  return calendarDay(atMs);
}

function measuredSet(set: PeakSet): MeasuredSet {
  return { day: dayOf(set), value: set.peak.meanDeg, conditions: set.conditions };
}

function legAngle({ peak }: PeakSet): LegAngle {
  return { deg: peak.meanDeg, yawSdDeg: peak.semDeg, otherSdDeg: 0 };
}
