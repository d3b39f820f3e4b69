import { max, sum } from 'd3-array';
import { countQuantile } from '#core/chance/countQuantile';
import { compareConditions } from '#core/conditions/compareConditions';
import type { ConditionId } from '#core/conditions/setConditions';
import type { SessionEvent, StageCourse, StageSession, UnansweredId } from '#core/programme/stageCourse';
import { withinSetTrend } from '#core/statistics/withinSetTrend';
import { upToOf } from '#documents/plan/itemProgress';
import { notedConditions } from '#documents/plan/notedConditions';
import type { PlanDocument, RepetitionItem } from '#documents/plan/planDocument';
import { afterwardsOf } from '#documents/session/afterwardsOf';
import { setConditions } from '#documents/session/setConditions';
import type { ListedRecording, ListedSession } from '#features/sessions/rules/listedSession';
import { calendarDay } from './calendarDay';

/** More swelling already keeps the patient's own device from beginning, so the rules ask for the same. */
const swellingRule = 'contact';
/** Until somebody sets how far a set goes: as often as the sit-to-stands of the library. */
const openEnded = { min: 20, max: 25 };
/** What may differ within a stage: how it was filmed and told, and which leg. */
const besideTheStage: readonly ConditionId[] = [
  'side',
  'footwear',
  'freeLeg',
  'feedback',
  'bendsFilmed',
  'isTest',
  'measuringVersion',
];
/** Nothing of these is compared. */
const notMeasured = { bendsFilmed: false, measuringVersion: 0 };

/**
 * How an item of a plan went at its present stage, as the rules for what to do next need it.
 *
 * @param sessions  all of the patient's, in any order
 * Missing: what was not answered is named in `unanswered`, never taken as well
 */
export function stageCourseOf(
  plan: Pick<PlanDocument, 'painLimit' | 'usualPain' | 'footwear'>,
  item: RepetitionItem,
  sessions: readonly ListedSession[],
): StageCourse {
  const oldestFirst = [...sessions]
    .filter(({ kind, silence }) => kind === 'visit' && silence === null)
    .sort((a, b) => Date.parse(a.startedAt) - Date.parse(b.startedAt));
  const noted = notedConditions(item, plan);
  const isAtStage = ({ line, asked = null }: ListedRecording) => {
    const [done, now] = [
      setConditions(line, notMeasured, asked),
      setConditions({ ...line, task: item.task, conditions: noted }, notMeasured, null),
    ];
    return (
      done !== null && now !== null && compareConditions(done, now, besideTheStage).differences.length === 0
    );
  };
  const done = oldestFirst
    .map((session, index) => ({ session, index, sets: session.sets.filter(isAtStage) }))
    .filter(({ sets }) => sets.length > 0);
  return {
    limit: plan.painLimit,
    usualPain: plan.usualPain ?? 0,
    swellingRule,
    upTo: upToOf(item) ?? openEnded,
    sessions: done.map(({ session, index, sets }, at) => {
      // What was said before the next of them began says how this one ended.
      const before = oldestFirst.slice(index + 1, done[at + 1]?.index);
      return stageSession(session, sets, item, before, sessions);
    }),
  };
}

function stageSession(
  session: ListedSession,
  sets: readonly ListedRecording[],
  item: RepetitionItem,
  after: readonly ListedSession[],
  all: readonly ListedSession[],
): StageSession {
  const afterwards = afterwardsOf(session.id, all);
  const { painBefore, painAfter, effort, isUnfilmed } = session;
  const during = max([
    ...sets.flatMap(({ line }) => line.painDuring ?? []),
    ...(painAfter === null ? [] : [painAfter]),
  ]);
  const unanswered = [
    ...(painBefore === null ? ['pain-before' as const] : []),
    ...(during === undefined ? ['pain-during' as const] : []),
    ...(effort === null ? ['effort' as const] : []),
  ] satisfies UnansweredId[];
  const whole = sets.filter(({ line }) => line.cutShort === null).length;
  return {
    day: calendarDay(session.startedAt),
    painBefore: painBefore ?? 0,
    painDuring: during ?? painBefore ?? 0,
    worstNextDay: afterwards?.worst ?? null,
    swelling: afterwards?.swelling ?? 'same',
    event: eventOf(session) ?? (after.some((later) => saysSign(later)) ? 'red-flag' : null),
    doneShare: isUnfilmed ? 1 : Math.min(1, whole / (item.sets * item.sides.length)),
    ...qualityOf(sets),
    driftInward: sets.some(driftsInward),
    effort: effort ?? 0,
    repetitions: max(sets, ({ line }) => line.prescribedRepetitions ?? 0) || item.repetitions,
    ...(unanswered.length === 0 ? {} : { unanswered }),
  };
}

/** What ended a session; null where nothing of that kind did, or a therapist has signed it as settled since. */
function eventOf({ endedBecause, settlement }: ListedSession): SessionEvent | null {
  if (endedBecause === null || settlement?.by === 'therapist') return null;
  if (endedBecause.fell === true) return 'fell';
  if (endedBecause.reason === 'gave-way' || endedBecause.reason === 'locked') return endedBecause.reason;
  return endedBecause.reason === 'sign' || endedBecause.reason === 'dizzy' ? 'red-flag' : null;
}

/** Swelling by itself is told by its own answer. */
function saysSign({ check, settlement }: ListedSession): boolean {
  const signs = (check?.signs ?? []).filter((sign) => sign !== 'swollen' && sign !== 'much-swollen');
  return signs.length > 0 && settlement?.by !== 'therapist';
}

/** Of all sets together; for the lower tenth those of the sets are added up: our choice, no source. */
function qualityOf(
  sets: readonly ListedRecording[],
): Pick<StageSession, 'measuredShare' | 'expectedShare' | 'lowerTenthShare'> {
  const results = sets.flatMap(({ reading }) => (reading.state === 'read' ? [reading.result] : []));
  const counts = results.flatMap(({ inLine }) => (inLine === null ? [] : [inLine]));
  const measured = sum(counts, ({ chancesInLine }) => chancesInLine.length);
  const found = sum(results, ({ marks }) => marks.length);
  const unread = sum(sets, ({ line, reading }) =>
    reading.state === 'read' ? 0 : (line.prescribedRepetitions ?? 1),
  );
  const share = (inLine: number) => (measured === 0 ? 0 : inLine / measured);
  return {
    measuredShare: found + unread === 0 ? 0 : measured / (found + unread),
    expectedShare: share(sum(counts, ({ expected }) => expected)),
    lowerTenthShare: share(sum(counts, ({ countChances }) => countQuantile(countChances, 0.1))),
  };
}

function driftsInward({ reading }: ListedRecording): boolean {
  const points = reading.state === 'read' ? (reading.course?.points ?? []) : [];
  const trend = withinSetTrend(points.map(({ valueDeg }) => valueDeg));
  return trend !== null && trend.isBeyondError && trend.slope > 0;
}
