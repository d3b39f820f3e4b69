import { group } from 'd3-array';
import type { CountInLine } from '#core/chance/countInLine';
import { compareConditions } from '#core/conditions/compareConditions';
import type { SetConditions } from '#core/conditions/setConditions';
import type { TaskId } from '#core/exercises/exercises';
import type { LimitEnd } from '#core/measures/limitEnd';
import { sides, type Side } from '#core/protocol/side';
import type { SetPeak } from '#core/scoring/findSetPeak';
import { afterwardsOf } from '#documents/session/afterwardsOf';
import { setConditions } from '#documents/session/setConditions';
import type { ListedRecording, ListedSession } from '#features/sessions/rules/listedSession';
import type { PeakPoint } from '#features/sessions/rules/peakPoints';

/** One measured set on the course. */
export interface CourseSet {
  recordingId: string;
  sessionId: string;
  /** Start of its session, ms since 1970. */
  atMs: number;
  task: TaskId;
  side: Side;
  number: number;
  points: PeakPoint[];
  /** The mean of the points; null with too few. */
  peak: SetPeak | null;
  inLine: CountInLine | null;
  /** Limits of the knee angle that it was judged by, degrees, inward positive. */
  limits: Record<LimitEnd, number>;
  /** Under what it was done and measured, as far as it is known. */
  conditions: SetConditions;
}

/** Sets of one exercise and side. */
export interface CourseTrack {
  side: Side;
  /** Oldest first. */
  sets: CourseSet[];
  /** The same, cut wherever the conditions or the limits differ: only sets of one run may be compared. */
  runs: CourseSet[][];
}

export interface CoursePanel {
  task: TaskId;
  /** Left before right; those without a set are left out. */
  tracks: CourseTrack[];
}

/** How a session felt, 0 to 10 each; null where it was not asked or answered. */
export interface CourseFeeling {
  sessionId: string;
  atMs: number;
  during: number | null;
  after: number | null;
  nextDay: number | null;
  effort: number | null;
}

/** A new plan, or limits that differ from those of the set before. */
export type CourseMark =
  | { kind: 'plan'; atMs: number }
  | {
      kind: 'limits';
      atMs: number;
      task: TaskId;
      side: Side;
      from: CourseSet['limits'];
      to: CourseSet['limits'];
    };

/** A patient's weeks. */
export interface Course {
  /** The exercise that was done last first. */
  panels: CoursePanel[];
  /** Oldest first. */
  feelings: CourseFeeling[];
  /** Oldest first. */
  marks: CourseMark[];
}

/** @param plans  those that were given */
export function buildCourse(
  sessions: readonly ListedSession[],
  plans: readonly { givenAt: string }[],
): Course {
  const oldestFirst = [...sessions].sort((a, b) => Date.parse(a.startedAt) - Date.parse(b.startedAt));
  const sets = oldestFirst.flatMap((session) => session.sets.flatMap((set) => courseSet(session, set) ?? []));
  const panels = [...group(sets, ({ task }) => task)].map(([task, ofTask]): CoursePanel => {
    const tracks = sides.flatMap((side) => {
      const ofSide = ofTask.filter((set) => set.side === side);
      return ofSide.length === 0 ? [] : [{ side, sets: ofSide, runs: alikeRuns(ofSide) }];
    });
    return { task, tracks };
  });
  const lastOf = ({ tracks }: CoursePanel) => Math.max(...tracks.map((track) => track.sets.at(-1)!.atMs));
  panels.sort((a, b) => lastOf(b) - lastOf(a));
  const limitMarks = panels.flatMap(({ tracks }) => tracks.flatMap((track) => limitChanges(track.sets)));
  const planMarks = plans.map(({ givenAt }) => ({ kind: 'plan' as const, atMs: Date.parse(givenAt) }));
  return {
    panels,
    feelings: oldestFirst
      .filter(({ kind, silence }) => kind === 'visit' && silence === null)
      .map((session) => feelingOf(session, sessions)),
    marks: [...planMarks, ...limitMarks].sort((a, b) => a.atMs - b.atMs),
  };
}

/** Null for a set that was not measured. */
function courseSet({ id, startedAt }: ListedSession, set: ListedRecording): CourseSet | null {
  const { line, reading, asked = null } = set;
  if (line.sessionId === null || reading.state !== 'read' || reading.course === undefined) return null;
  const { points, limits, bendsFilmed, measuringVersion } = reading.course;
  const conditions = setConditions(line, { bendsFilmed, measuringVersion }, asked);
  if (conditions === null) return null;
  return {
    recordingId: line.sessionId,
    sessionId: id,
    atMs: Date.parse(startedAt),
    task: conditions.task,
    side: line.side,
    number: line.number,
    points,
    peak: reading.result.peak,
    inLine: reading.result.inLine,
    limits: limits['knee-angle'],
    conditions,
  };
}

/** Runs of neighbours that were done and measured under the same conditions, and judged by the same limits. */
function alikeRuns(sets: readonly CourseSet[]): CourseSet[][] {
  const runs: CourseSet[][] = [];
  for (const set of sets) {
    const run = runs.at(-1);
    const first = run?.[0];
    if (
      run !== undefined &&
      first !== undefined &&
      isAlike(first.conditions, set.conditions) &&
      sameEnds(first.limits, set.limits)
    )
      run.push(set);
    else runs.push([set]);
  }
  return runs;
}

function sameEnds(one: CourseSet['limits'], other: CourseSet['limits']): boolean {
  return one.least === other.least && one.most === other.most;
}

function isAlike(one: SetConditions, other: SetConditions): boolean {
  return compareConditions(one, other).differences.length === 0;
}

/** Sets of one day are in the order in which they were done; the first has nothing before it. */
function limitChanges(sets: readonly CourseSet[]): CourseMark[] {
  return sets.flatMap((set, index) => {
    const before = sets[index - 1];
    if (before === undefined) return [];
    const { limits: from } = before;
    const { atMs, task, side, limits: to } = set;
    return sameEnds(from, to) ? [] : [{ kind: 'limits' as const, atMs, task, side, from, to }];
  });
}

export function feelingOf(
  { id, startedAt, sets, painAfter, effort }: ListedSession,
  sessions: readonly ListedSession[],
): CourseFeeling {
  const during = sets.flatMap(({ line }) => (line.painDuring === null ? [] : [line.painDuring]));
  return {
    sessionId: id,
    atMs: Date.parse(startedAt),
    during: during.length === 0 ? null : Math.max(...during),
    after: painAfter,
    nextDay: afterwardsOf(id, sessions)?.worst ?? null,
    effort,
  };
}
