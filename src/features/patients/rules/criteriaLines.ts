import { ascending, greatest, max, mean, min } from 'd3-array';
import { findAssessment } from '#core/assessments/assessments';
import { effusionGrades } from '#core/assessments/effusion';
import { calendarDay, dayOfDate } from '#core/calendarDay';
import {
  aroundValue,
  criteriaCards,
  criterionState,
  numericPainDetectable,
  type CriteriaCardId,
  type Criterion,
  type CriterionSource,
  type CriterionState,
  type Interval,
} from '#core/criteria/criteria';
import { handMeasures } from '#core/criteria/handMeasures';
import { sides, type Side } from '#core/protocol/side';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { dateInWords, dayWords, isoDay } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { oneDecimal } from '#words/oneDecimal';
import { assessmentCourses } from './assessmentResults';
import type { TrackChange } from './changes';

/** A line of the card with what was measured of it. */
export interface CriterionLine {
  criterion: Criterion;
  state: CriterionState;
  /** What was measured, when and by whom; null where nothing was. */
  measured: Measured | null;
}

interface Measured {
  value: number;
  words: string;
  /** Day since 1970; the latest of several sources counts. */
  day: number;
  /** '3 April 2026, AB'; empty where it is only counted from a date. */
  whenAndWho: string;
  /** Where the true value is; null where no error is known. */
  interval: Interval | null;
}

/** The words of a state; nothing else is ever said of a line. */
export const stateWords: Record<CriterionState, string> = {
  met: 'met',
  'not-met': 'not met',
  'within-error': 'within error of the line',
  'not-measured': 'not measured',
};

/**
 * The lines of a card. They are no score, and no number of them says anything.
 *
 * @param nowMs  since 1970
 * @param changes  what was measured of each exercise and leg
 */
export function criteriaLines(
  card: CriteriaCardId,
  patient: PatientDocument,
  nowMs: number,
  changes: readonly TrackChange[] = [],
): CriterionLine[] {
  return criteriaCards[card].map((criterion) => {
    const found = criterion.from.flatMap((source) => measuredFrom(source, patient, nowMs, changes) ?? []);
    const measured = greatest(found, ({ day }) => day) ?? null;
    const state = criterionState(measured?.value ?? null, criterion.line, measured?.interval ?? null);
    return { criterion, state, measured };
  });
}

/** '86 % (Friday 3 April 2026, AB). Line: 90 or more. How far error reaches is not known.' */
export function criterionSentence({ criterion, measured }: CriterionLine): string {
  if (measured === null) return `Line: ${criterion.lineWords}.`;
  const who = measured.whenAndWho === '' ? '' : ` (${measured.whenAndWho})`;
  const isCounted = measured.whenAndWho === '';
  const error = measured.interval !== null || isCounted ? '' : ' How far error reaches is not known.';
  return `${measured.words}${who}. Line: ${criterion.lineWords}.${error}`;
}

function measuredFrom(
  source: CriterionSource,
  patient: PatientDocument,
  nowMs: number,
  changes: readonly TrackChange[],
): Measured | null {
  switch (source.kind) {
    case 'weeks-since-surgery':
      return weeksSince(patient.surgery?.on ?? null, nowMs);
    case 'worst-pain':
      return worstPain(patient);
    case 'control':
      return control(patient, changes);
    case 'hand': {
      const { unit } = handMeasures.find(({ id }) => id === source.measure)!;
      const entries = patient.criteria.filter(
        ({ measure, withdrawn }) => measure === source.measure && withdrawn === null,
      );
      const last = latest(entries);
      if (last === undefined) return null;
      const words = `${last.value}${unit === 'deg' ? '°' : ` ${unit}`}`;
      return { value: last.value, words, interval: null, ...signed(last) };
    }
    case 'symmetry':
    case 'result':
      return fromTest(source, patient);
  }
}

/** Measured last; of those of one day, entered last. */
function latest<Entry extends { on: string; at: string }>(entries: readonly Entry[]): Entry | undefined {
  return greatest(entries, (a, b) => ascending(a.on, b.on) || ascending(a.at, b.at));
}

function weeksSince(on: string | null, nowMs: number): Measured | null {
  const today = calendarDay(nowMs);
  if (on === null || dayOfDate(on) > today) return null;
  const weeks = Math.floor((today - dayOfDate(on)) / 7);
  return {
    value: weeks,
    words: `${weeks} weeks since ${dateInWords(on)}`,
    day: today,
    whenAndWho: '',
    interval: null,
  };
}

/** Of the exercise that was tested last: the last days that are compared as a change, where all of them are tests. */
function control(patient: PatientDocument, changes: readonly TrackChange[]): Measured | null {
  const operated = operatedSide(patient);
  const tested = changes.filter(
    ({ side, later }) => side === operated && later.every(({ conditions }) => conditions.isTest),
  );
  const last = greatest(tested, ({ later }) => later.at(-1)?.atMs ?? -Infinity);
  const newest = last?.later.at(-1);
  if (last === undefined || newest === undefined) return null;
  const days = last.later.length;
  const deg = mean(last.later, ({ peak }) => peak.meanDeg)!;
  const value = deg - newest.limits.most;
  const reach = (1.96 * last.semDeg) / Math.sqrt(days);
  return {
    value,
    words: `${exerciseName(last.task)}: ${oneDecimal(deg)}°, give or take ${oneDecimal(reach)}°, limit ${oneDecimal(newest.limits.most)}°`,
    interval: { low: value - reach, high: value + reach },
    day: calendarDay(newest.atMs),
    whenAndWho: `${days === 1 ? 'one day' : `${days} days`}, last on ${dayWords(new Date(newest.atMs).toISOString())}`,
  };
}

function operatedSide({ surgery, painfulSide }: PatientDocument): Side | null {
  return surgery?.side ?? sides.find((side) => side === painfulSide) ?? null;
}

function worstPain({ questionnaires }: PatientDocument): Measured | null {
  const kept = questionnaires.filter((one) => one.of === 'numeric-pain' && one.withdrawn === null);
  const last = latest(kept);
  const answer = last?.answers.find(({ linkId }) => linkId === 'worst')?.answers[0];
  if (last === undefined || answer?.kind !== 'whole') return null;
  const { value } = answer;
  const interval = aroundValue(value, numericPainDetectable);
  return { value, words: `${value} of 10`, interval, ...signed(last) };
}

/** From the newest time a test was done, where it has what is asked for. */
function fromTest(
  source: Extract<CriterionSource, { test: unknown }>,
  patient: PatientDocument,
): Measured | null {
  const operated = operatedSide(patient);
  const course = assessmentCourses(patient.assessments, operated).find(
    ({ assessment }) => assessment.id === source.test,
  );
  if (course === undefined || operated === null) return null;
  const last = course.done.at(-1)!;
  const when = signed({ ...last.record, on: isoDay(last.record.at) });
  if (source.kind === 'symmetry') {
    if (course.symmetry === null) return null;
    const { pct, interval } = course.symmetry.found;
    const reach = interval && { low: interval.lowPct, high: interval.highPct };
    return { value: pct, words: `${oneDecimal(pct)} %`, interval: reach, ...when };
  }
  const value = source.leg === 'operated' ? last.results[operated] : weaker(source.test, last.results);
  if (value === null) return null;
  const { unit, error } = findAssessment(source.test);
  const words = unit === 'grade' ? effusionGrades[value]! : `${value} ${unit}`;
  const interval = error === null ? null : aroundValue(value, error.detectable);
  return { value, words, interval, ...when };
}

/** Null where one leg was not tested. */
function weaker(
  test: Parameters<typeof findAssessment>[0],
  { left, right }: Record<Side, number | null>,
): number | null {
  if (left === null || right === null) return null;
  return (findAssessment(test).better === 'less' ? max([left, right]) : min([left, right]))!;
}

function signed({ on, by }: { on: string; by: string }): Pick<Measured, 'day' | 'whenAndWho'> {
  return { day: dayOfDate(on), whenAndWho: `${dateInWords(on)}, ${by}` };
}
