import { group, groups, mean } from 'd3-array';
import {
  changeOfSets,
  courseOfTests,
  type ChangeOfSets,
  type CourseOfTests,
  type MeasuredSet,
} from '#core/change/changeOfSets';
import { sideDifference, type LegPair, type SideDifference } from '#core/change/sideDifference';
import { compareConditions } from '#core/conditions/compareConditions';
import type { TaskId } from '#core/exercises/exercises';
import type { Side } from '#core/protocol/side';
import { semOfDay, type OwnError } from '#core/reliability/ownError';
import type { Course, CourseSet, CourseTrack } from './buildCourse';
import { calendarDay } from './calendarDay';

/** Days at each end of the course whose means are compared: three show changes from 4.8° on, one from 8.3° on. */
const daysAtEnds = 3;
/** Days with both legs, of the latest, from which the sides are compared. */
const daysOfSides = 3;

export interface TrackChange {
  task: TaskId;
  side: Side;
  /** First days against last days of the sets that are like the newest; null with one day. */
  change: ChangeOfSets | null;
  /** Over weeks; null without a test. */
  tests: CourseOfTests | null;
  /** One a day, oldest first: those that are like the newest set. */
  days: { day: number; meanDeg: number }[];
  /** Error of one day to reckon with, degrees. */
  semDeg: number;
  /** Sets that are unlike the newest one, which are not in it. */
  leftOut: number;
}

/** What changed in each exercise and leg, and where the legs differ, beyond error. */
export function trackChanges(course: Course, error: OwnError): TrackChange[] {
  return course.panels.flatMap(({ task, tracks }) =>
    tracks.flatMap((track) => trackChange(task, track, error) ?? []),
  );
}

function trackChange(task: TaskId, { side, sets }: CourseTrack, error: OwnError): TrackChange | null {
  const measured = sets.flatMap((set) => measuredSet(set) ?? []);
  const newest = measured.at(-1);
  if (newest === undefined) return null;
  const alike = measured.filter(
    ({ conditions }) => compareConditions(conditions, newest.conditions).differences.length === 0,
  );
  const semDeg = semOfDay(error, Math.max(...sets.map(({ peak }) => peak?.semDeg ?? 0)));
  const byDay = groups(alike, ({ day }) => day);
  const atEnds = Math.min(daysAtEnds, Math.floor(byDay.length / 2));
  const setsOf = (days: typeof byDay) => days.flatMap(([, ofDay]) => ofDay);
  return {
    task,
    side,
    change:
      atEnds === 0
        ? null
        : changeOfSets(setsOf(byDay.slice(0, atEnds)), setsOf(byDay.slice(-atEnds)), semDeg),
    tests: measured.some(({ conditions }) => conditions.isTest) ? courseOfTests(measured, semDeg) : null,
    days: byDay.map(([day, ofDay]) => ({ day, meanDeg: mean(ofDay, ({ value }) => value)! })),
    semDeg,
    leftOut: measured.length - alike.length,
  };
}

function measuredSet({ atMs, peak, conditions }: CourseSet): MeasuredSet | null {
  return peak === null ? null : { day: calendarDay(atMs), value: peak.meanDeg, conditions };
}

/**
 * Left against right in each exercise, over the latest days with both legs done alike.
 *
 * How much of a set's error is from how the body was turned is not kept with it, so all of it counts as such: then it
 * adds up between the legs, and only a larger difference counts as one.
 */
export function sideDifferences(course: Course): { task: TaskId; difference: SideDifference }[] {
  return course.panels.flatMap(({ task, tracks }) => {
    const days = group(
      tracks.flatMap(({ sets }) => sets.filter(({ peak }) => peak !== null)),
      ({ atMs }) => calendarDay(atMs),
    );
    const pairs = [...days].sort(([a], [b]) => a - b).flatMap(([, sets]) => legPair(sets) ?? []);
    if (pairs.length === 0) return [];
    return [{ task, difference: sideDifference(pairs.slice(-daysOfSides), 'same') }];
  });
}

/** The first sets of both legs on a day; null where they were not alike. */
function legPair(sets: readonly CourseSet[]): LegPair | null {
  const [left, right] = (['left', 'right'] as const).map((side) => sets.find((set) => set.side === side));
  if (!left?.peak || !right?.peak) return null;
  if (compareConditions(left.conditions, right.conditions, ['side']).differences.length > 0) return null;
  const leg = ({ meanDeg, semDeg }: NonNullable<CourseSet['peak']>) => ({
    deg: meanDeg,
    yawSdDeg: semDeg,
    otherSdDeg: 0,
  });
  return { left: leg(left.peak), right: leg(right.peak) };
}
