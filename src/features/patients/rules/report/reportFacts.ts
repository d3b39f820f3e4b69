import { greatest, median } from 'd3-array';
import type { CountInLine } from '#core/chance/countInLine';
import { changeOfSets, type ChangeOfSets, type MeasuredSet } from '#core/change/changeOfSets';
import { painChange, type PainChange } from '#core/change/painChange';
import { betweenDaysSemDeg } from '#core/change/publishedSem';
import { sideDifference, type LegPair, type SideDifference } from '#core/change/sideDifference';
import { compareConditions, type ConditionComparison } from '#core/conditions/compareConditions';
import type { TaskId } from '#core/exercises/exercises';
import type { Side } from '#core/protocol/side';
import type { SignId } from '#core/safety/signs';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { PlanDocument } from '#documents/plan/planDocument';
import { findPain } from '#features/sessions/rules/findPain';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { buildCourse, type Course, type CourseFeeling, type CourseSet } from '../buildCourse';
import { dueAndDone, type DueAndDone } from '../dueAndDone';

/** What a report is made from. */
export interface ReportCase {
  patient: PatientDocument;
  /** The latest first. */
  plans: readonly PlanDocument[];
  /** In any order. */
  sessions: readonly ListedSession[];
  nowMs: number;
  /** What is proposed next, as sentences; none where nothing is. */
  proposals?: readonly string[];
}

/** Answers of two times, and the worst of all. */
export interface PainFacts {
  change: PainChange;
  worst: { score: number; atMs: number };
}

/** How one leg did one exercise, then and now. */
export interface ControlFacts {
  task: TaskId;
  side: Side;
  /** The sets of the first and of the last days that are compared; empty `earlier`: there is one day only. */
  earlier: CourseSet[];
  later: CourseSet[];
  /** Null with one day only. */
  change: ChangeOfSets | null;
  /** Of the first and the last of these sets; null where nothing was counted, or the limits are not the same. */
  inLine: { earlier: CountInLine | null; later: CountInLine | null };
  /** The first set of all, where it was done otherwise than the last one and is not compared. */
  notCompared: { atMs: number; comparison: ConditionComparison } | null;
}

export interface SideFacts {
  task: TaskId;
  atMs: number;
  difference: SideDifference;
}

/** What a report says, as data: nothing in it is compared across unlike conditions. */
export interface ReportFacts {
  patient: PatientDocument;
  /** Days of the first and the last session, ms since 1970; null without one. */
  fromMs: number | null;
  untilMs: number | null;
  /** Sessions before which warning signs were asked about, and the signs that were said. */
  asked: { sessions: number; lastMs: number | null; signs: SignId[] };
  inForce: PlanDocument | null;
  /** Of the plan in force; null without one. */
  done: DueAndDone | null;
  /** Sessions in which something was done, under whatever plan. */
  sessions: number;
  /** Sessions that were stopped or not begun for a reason of the body. */
  stopped: number;
  /** Sessions with pain above the limit. */
  abovePainLimit: number;
  /** What was said of the body and is not settled. */
  open: number;
  /** The most pain of each session; null below two sessions with an answer. */
  pain: PainFacts | null;
  /** Of the day after. */
  nextDay: PainFacts | null;
  /** The painful side's first, then what was done last. */
  control: ControlFacts[];
  /** What else was measured, and is left to the patient's page. */
  notReported: Pick<ControlFacts, 'task' | 'side'>[];
  sides: SideFacts | null;
  /** Median half-width of the bands of all repetitions in it, and their number; null where nothing was measured. */
  band: { deg: number; repetitions: number } | null;
  measuringVersions: number[];
  proposals: readonly string[];
}

/**
 * As many days of the beginning and of the end are compared, from two weeks each. Three days tell 5 degrees
 * (docs/programme.md); our choice.
 */
const mostDays = 3;
const windowMs = 14 * 24 * 3_600_000;
/** More exercises and legs are on the patient's page; a report stays short. */
const mostControls = 2;
const dayMs = 24 * 3_600_000;

export function reportFacts({ patient, plans, sessions, nowMs, proposals = [] }: ReportCase): ReportFacts {
  const course = buildCourse(sessions, patient.plans);
  const asked = sessions.filter(({ check }) => check !== null);
  const times = sessions.map(({ startedAt }) => Date.parse(startedAt));
  const askedMs = asked.map(({ startedAt }) => Date.parse(startedAt));
  const [inForce] = plans;
  const controls = course.panels.flatMap(({ tracks }) => tracks.flatMap(({ sets }) => controlOf(sets) ?? []));
  const isPainful = ({ side }: ControlFacts) => side === patient.painfulSide;
  controls.sort((a, b) => Number(isPainful(b)) - Number(isPainful(a)));
  const control = controls.slice(0, mostControls);
  const shown = control.flatMap(({ earlier, later }) => [...earlier, ...later]);
  const bands = shown.flatMap(({ points }) =>
    points.flatMap(({ valueDeg, bandDeg }) => (valueDeg === null ? [] : [bandDeg])),
  );
  return {
    patient,
    fromMs: times.length === 0 ? null : Math.min(...times),
    untilMs: times.length === 0 ? null : Math.max(...times),
    asked: {
      sessions: asked.length,
      lastMs: askedMs.length === 0 ? null : Math.max(...askedMs),
      signs: [...new Set(asked.flatMap(({ check }) => check!.signs))],
    },
    inForce: inForce ?? null,
    done: inForce === undefined ? null : dueAndDone(inForce, sessions, nowMs),
    sessions: sessions.filter(({ sets }) => sets.length > 0).length,
    stopped: sessions.filter(({ endedBecause }) => endedBecause !== null).length,
    abovePainLimit: sessions.filter((one) => findPain(one).some(({ kind }) => kind === 'pain-above-limit'))
      .length,
    open: sessions.filter(({ isOpen }) => isOpen).length,
    pain: painOf(course.feelings, mostPain),
    nextDay: painOf(course.feelings, ({ nextDay }) => nextDay),
    control,
    notReported: controls.slice(mostControls).map(({ task, side }) => ({ task, side })),
    sides: sidesOf(course),
    band: bands.length === 0 ? null : { deg: median(bands)!, repetitions: bands.length },
    measuringVersions: [...new Set(shown.map(({ conditions }) => conditions.measuringVersion))].sort(
      (a, b) => a - b,
    ),
    proposals,
  };
}

function mostPain({ during, after }: CourseFeeling): number | null {
  const scores = [during, after].filter((score) => score !== null);
  return scores.length === 0 ? null : Math.max(...scores);
}

/** The first week with answers against the last one; null where both are the same, or one is missing. */
function painOf(
  feelings: readonly CourseFeeling[],
  scoreOf: (feeling: CourseFeeling) => number | null,
): PainFacts | null {
  const answers = feelings.flatMap((feeling) => {
    const score = scoreOf(feeling);
    return score === null ? [] : [{ atMs: feeling.atMs, score }];
  });
  const [first, last] = [answers[0], answers.at(-1)];
  if (first === undefined || last === undefined || last.atMs - first.atMs < 7 * dayMs) return null;
  const then = answers.filter(({ atMs }) => atMs - first.atMs < 7 * dayMs);
  const now = answers.filter((one) => last.atMs - one.atMs < 7 * dayMs && !then.includes(one));
  const scores = (of: typeof answers) => of.map(({ score }) => score);
  return { change: painChange(scores(then), scores(now)), worst: greatest(answers, ({ score }) => score)! };
}

/**
 * The first days against the last ones, of sets that are like the newest one: of each day the first set, since a set
 * that comes later is done by a tired leg. Tests go before training.
 */
function controlOf(all: readonly CourseSet[]): ControlFacts | null {
  const measured = all.filter(({ peak }) => peak !== null);
  const tests = measured.filter(({ conditions }) => conditions.isTest);
  const firsts = firstOfEachDay(tests.length > 0 ? tests : measured);
  const newest = firsts.at(-1);
  if (newest === undefined) return null;
  const compared = firsts.map((set) => ({
    set,
    comparison: compareConditions(set.conditions, newest.conditions),
  }));
  const alike = compared.filter(({ comparison }) => comparison.differences.length === 0);
  const sets = alike.map(({ set }) => set);
  const earlier = sets
    .slice(0, -1)
    .filter(({ atMs }) => atMs - sets[0]!.atMs <= windowMs)
    .slice(0, mostDays);
  const later = sets
    .filter((set) => !earlier.includes(set) && newest.atMs - set.atMs <= windowMs)
    .slice(-mostDays);
  const [oldest] = compared;
  const { task, side } = newest;
  return {
    task,
    side,
    earlier,
    later,
    change:
      earlier.length === 0
        ? null
        : changeOfSets(earlier.map(measuredSet), later.map(measuredSet), semOf([...earlier, ...later])),
    inLine: inLineOf(earlier[0], later.at(-1)),
    notCompared:
      oldest!.comparison.differences.length === 0
        ? null
        : { atMs: oldest!.set.atMs, comparison: oldest!.comparison },
  };
}

/** Counts are of the same limits, or not told side by side. */
function inLineOf(earlier: CourseSet | undefined, later: CourseSet | undefined): ControlFacts['inLine'] {
  const isSame = earlier?.limits.least === later?.limits.least && earlier?.limits.most === later?.limits.most;
  return { earlier: isSame ? (earlier?.inLine ?? null) : null, later: later?.inLine ?? null };
}

function firstOfEachDay(sets: readonly CourseSet[]): CourseSet[] {
  const days = new Set<number>();
  return sets.filter((set) => {
    const day = dayOf(set);
    if (days.has(day)) return false;
    days.add(day);
    return true;
  });
}

function dayOf({ atMs }: CourseSet): number {
  return Math.floor(atMs / dayMs);
}

function measuredSet(set: CourseSet): MeasuredSet {
  return { day: dayOf(set), value: set.peak!.meanDeg, conditions: set.conditions };
}

/** Between days, or the widest of the sets' own errors where that is larger. */
function semOf(sets: readonly CourseSet[]): number {
  return Math.max(betweenDaysSemDeg, ...sets.map(({ peak }) => peak!.semDeg));
}

/**
 * Left against right on the last days on which both legs did the exercise alike. How much of an error comes from the
 * view is not kept with a set, so all of it is taken to, with one placing of the camera: the widest that it can be.
 */
function sidesOf({ panels }: Course): SideFacts | null {
  const found = panels.flatMap(({ task, tracks }): SideFacts[] => {
    const [left, right] = (['left', 'right'] as const).map((side) =>
      firstOfEachDay(
        (tracks.find((track) => track.side === side)?.sets ?? []).filter(({ peak }) => peak !== null),
      ),
    ) as [CourseSet[], CourseSet[]];
    const pairs = left.flatMap((one) => {
      const other = right.find((set) => dayOf(set) === dayOf(one));
      const isAlike =
        other !== undefined &&
        compareConditions(one.conditions, other.conditions, ['side']).differences.length === 0;
      return isAlike ? [{ left: one, right: other }] : [];
    });
    const last = pairs.at(-1);
    if (last === undefined) return [];
    const isLikeLast = (set: CourseSet) =>
      compareConditions(set.conditions, last.left.conditions).differences.length === 0;
    const days = pairs.filter((pair) => isLikeLast(pair.left)).slice(-mostDays);
    const legOf = ({ peak }: CourseSet) => ({
      deg: peak!.meanDeg,
      yawSdDeg: peak!.semDeg,
      otherSdDeg: 0,
    });
    const legs = days.map((pair): LegPair => ({ left: legOf(pair.left), right: legOf(pair.right) }));
    return [{ task, atMs: last.left.atMs, difference: sideDifference(legs, 'same') }];
  });
  return found.sort((a, b) => b.atMs - a.atMs)[0] ?? null;
}
