import { ascending, greatest, median } from 'd3-array';
import type { CountInLine } from '#core/chance/countInLine';
import { painChange, type PainChange } from '#core/change/painChange';
import type { OwnError } from '#core/reliability/ownError';
import type { SignId } from '#core/safety/signs';
import type { PracticeStages } from '#documents/library/stages';
import type { RedFlagsRecord, Restriction } from '#documents/patient/caseEntries';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { PlanDocument } from '#documents/plan/planDocument';
import { restrictionsInForce } from '#features/planning/rules/refusals';
import { findPain } from '#features/sessions/rules/findPain';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { isoDay } from '#words/dateWords';
import { buildCourse, type CourseFeeling, type CourseSet } from '../buildCourse';
import { sideChanges, trackChanges, type SideChange, type TrackChange } from '../changes';
import { dueAndDone, type DueAndDone } from '../dueAndDone';

/** What a report is made from. */
export interface ReportCase {
  patient: PatientDocument;
  /** The latest first. */
  plans: readonly PlanDocument[];
  /** In any order. */
  sessions: readonly ListedSession[];
  nowMs: number;
  /** Of the practice between days. */
  error: OwnError;
  /** The practice's stages; left out where they are the program's. */
  stages?: PracticeStages;
}

/** Answers of two times, and the worst of all. */
export interface PainFacts {
  change: PainChange;
  worst: { score: number; atMs: number };
}

/** How one leg did one exercise, then and now. */
export interface ControlFacts extends TrackChange {
  /** Of the first and the last set that are compared; null where nothing was counted, or the limits are not the same. */
  inLine: { earlier: CountInLine | null; later: CountInLine | null };
}

/** What a report says, as data: nothing in it is compared across unlike conditions. */
export interface ReportFacts {
  patient: PatientDocument;
  /** Restrictions that count on the day of the report. */
  prescribed: Restriction[];
  /** What a clinician asked about at the last visit that was written down; null without one. */
  visit: RedFlagsRecord | null;
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
  /** Of the exercise that both legs did last. */
  sides: SideChange | null;
  /** Median half-width of the bands of all repetitions in it, and their number; null where nothing was measured. */
  band: { deg: number; repetitions: number } | null;
  measuringVersions: number[];
}

/** More exercises and legs are on the patient's page; a report stays short. */
const mostControls = 2;
const dayMs = 24 * 3_600_000;

export function reportFacts({ patient, plans, sessions, nowMs, error }: ReportCase): ReportFacts {
  const course = buildCourse(sessions, patient.plans);
  const asked = sessions.filter(({ check }) => check !== null);
  const times = sessions.map(({ startedAt }) => Date.parse(startedAt));
  const askedMs = asked.map(({ startedAt }) => Date.parse(startedAt));
  const [inForce] = plans;
  const controls = trackChanges(course, error).map((change): ControlFacts => ({
    ...change,
    inLine: inLineOf(change.earlier[0], change.later.at(-1)),
  }));
  const isPainful = ({ side }: ControlFacts) => side === patient.painfulSide;
  controls.sort((a, b) => Number(isPainful(b)) - Number(isPainful(a)));
  const control = controls.slice(0, mostControls);
  const shown = control.flatMap(({ earlier, later }) => [...earlier, ...later]);
  const bands = shown.flatMap(({ points }) =>
    points.flatMap(({ valueDeg, bandDeg }) => (valueDeg === null ? [] : [bandDeg])),
  );
  const today = isoDay(new Date(nowMs).toISOString());
  return {
    patient,
    prescribed: restrictionsInForce(patient.prescribedRestrictions, today),
    visit:
      greatest(
        patient.redFlags.filter(({ withdrawn }) => withdrawn === null),
        (a, b) => ascending(a.on, b.on) || ascending(a.at, b.at),
      ) ?? null,
    fromMs: times.length === 0 ? null : Math.min(...times),
    untilMs: times.length === 0 ? null : Math.max(...times),
    asked: {
      sessions: asked.length,
      lastMs: askedMs.length === 0 ? null : Math.max(...askedMs),
      signs: [...new Set(asked.flatMap(({ check }) => check!.signs))],
    },
    inForce: inForce ?? null,
    done: inForce === undefined ? null : dueAndDone(inForce, sessions, patient.pauses, nowMs),
    sessions: sessions.filter(({ sets }) => sets.length > 0).length,
    stopped: sessions.filter(({ endedBecause }) => endedBecause !== null).length,
    abovePainLimit: sessions.filter((one) => findPain(one).some(({ kind }) => kind === 'pain-above-limit'))
      .length,
    open: sessions.filter(({ isOpen }) => isOpen).length,
    pain: painOf(course.feelings, mostPain),
    nextDay: painOf(course.feelings, ({ nextDay }) => nextDay),
    control,
    notReported: controls.slice(mostControls).map(({ task, side }) => ({ task, side })),
    sides: greatest(sideChanges(course), ({ atMs }) => atMs) ?? null,
    band: bands.length === 0 ? null : { deg: median(bands)!, repetitions: bands.length },
    measuringVersions: [...new Set(shown.map(({ conditions }) => conditions.measuringVersion))].sort(
      (a, b) => a - b,
    ),
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

/** Counts are of the same limits, or not told side by side. */
function inLineOf(earlier: CourseSet | undefined, later: CourseSet | undefined): ControlFacts['inLine'] {
  const isSame = earlier?.limits.least === later?.limits.least && earlier?.limits.most === later?.limits.most;
  return { earlier: isSame ? (earlier?.inLine ?? null) : null, later: later?.inLine ?? null };
}
