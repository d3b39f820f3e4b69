import { max, sum } from 'd3-array';
import { calendarDay } from '#core/calendarDay';
import type { CountInLine } from '#core/chance/countInLine';
import { countQuantile } from '#core/chance/countQuantile';
import { compareConditions } from '#core/conditions/compareConditions';
import type { ConditionId, NotedConditions } from '#core/conditions/setConditions';
import type { SessionEvent, StageCourse, StageSession, UnansweredId } from '#core/programme/stageCourse';
import { withinSetTrend } from '#core/statistics/withinSetTrend';
import { upToOf } from '../plan/itemProgress';
import { notedConditions } from '../plan/notedConditions';
import type { PlanDocument, RepetitionItem } from '../plan/planDocument';
import { afterwardsOf } from '../session/afterwardsOf';
import type { SessionDocument, SessionSet, Settlement } from '../session/sessionDocument';
import { setConditions } from '../session/setConditions';

/** A set of a session with what was measured of it. */
export interface StagedSet {
  line: SessionSet;
  /** Under what its plan asks for it, for sessions that did not note it; null where that is not known. */
  asked: NotedConditions | null;
  /** Null where nothing could be read. */
  measured: {
    /** Complete repetitions. */
    found: number;
    inLine: CountInLine | null;
    /** Largest inward knee angle of each, degrees; null where it was not measured. */
    peaksDeg: readonly (number | null)[];
  } | null;
}

/** A session as far as the rules for what to do next need it. */
export interface StagedSession extends Pick<
  SessionDocument,
  | 'id'
  | 'startedAt'
  | 'painBefore'
  | 'painAfter'
  | 'check'
  | 'afterLast'
  | 'endedBecause'
  | 'isUnfilmed'
  | 'silence'
  | 'effort'
> {
  /** Who says that what was said of the body is settled; null where nobody does. */
  settlement: Settlement | null;
  sets: readonly StagedSet[];
}

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
  sessions: readonly StagedSession[],
): StageCourse {
  const oldestFirst = [...sessions]
    .filter(({ silence }) => silence === null)
    .sort((a, b) => Date.parse(a.startedAt) - Date.parse(b.startedAt));
  const noted = notedConditions(item, plan);
  const isAtStage = ({ line, asked }: StagedSet) => {
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
  session: StagedSession,
  sets: readonly StagedSet[],
  item: RepetitionItem,
  after: readonly StagedSession[],
  all: readonly StagedSession[],
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
function eventOf({ endedBecause, settlement }: StagedSession): SessionEvent | null {
  if (endedBecause === null || settlement?.by === 'therapist') return null;
  if (endedBecause.fell === true) return 'fell';
  if (endedBecause.reason === 'gave-way' || endedBecause.reason === 'locked') return endedBecause.reason;
  return endedBecause.reason === 'sign' || endedBecause.reason === 'dizzy' ? 'red-flag' : null;
}

/** Swelling by itself is told by its own answer. */
function saysSign({ check, settlement }: StagedSession): boolean {
  const signs = (check?.signs ?? []).filter((sign) => sign !== 'swollen' && sign !== 'much-swollen');
  return signs.length > 0 && settlement?.by !== 'therapist';
}

/** Of all sets together; for the lower tenth those of the sets are added up: our choice, no source. */
function qualityOf(
  sets: readonly StagedSet[],
): Pick<StageSession, 'measuredShare' | 'expectedShare' | 'lowerTenthShare'> {
  const counts = sets.flatMap(({ measured: one }) => one?.inLine ?? []);
  const measured = sum(counts, ({ chancesInLine }) => chancesInLine.length);
  const found = sum(sets, ({ measured: one }) => one?.found ?? 0);
  const unread = sum(sets, ({ line, measured: one }) =>
    one === null ? (line.prescribedRepetitions ?? 1) : 0,
  );
  const share = (inLine: number) => (measured === 0 ? 0 : inLine / measured);
  return {
    measuredShare: found + unread === 0 ? 0 : measured / (found + unread),
    expectedShare: share(sum(counts, ({ expected }) => expected)),
    lowerTenthShare: share(sum(counts, ({ countChances }) => countQuantile(countChances, 0.1))),
  };
}

function driftsInward({ measured }: StagedSet): boolean {
  const trend = withinSetTrend(measured?.peaksDeg ?? []);
  return trend !== null && trend.isBeyondError && trend.slope > 0;
}
