import { greatest } from 'd3-array';
import { verdictSide } from '#core/scoring/verdict';
import { mostFrequent, type SetReport } from './buildSetReport';
import type { Finding } from './finding';
import { findPain } from './findPain';
import type { ListedSession } from './listedSession';

/** From this share of repetitions without a verdict on, the view counts as too poor. Our own choice, no source. */
export const poorViewShare = 1 / 4;

const dayMs = 24 * 3_600_000;

/**
 * What in a session needs a look, the most pressing first: what was said of the body, pain, then a set cut short,
 * then the wrong leg, then how the knee moved, then what could not be measured. Sets that are still being read add nothing yet.
 */
export function findNeeds(session: Omit<ListedSession, 'kind' | 'patient'>): Finding[] {
  const readings = session.sets.map(({ reading }) => reading);
  const read = readings.flatMap((reading) => (reading.state === 'read' ? [reading] : []));
  const results = read.map(({ result }) => result);
  return [
    ...findSaid(session),
    ...findSilence(session),
    ...findPain(session),
    ...findAside(session),
    ...findCutShort(session),
    ...(session.isUnfilmed && session.sets.length > 0 ? [{ kind: 'unfilmed' as const }] : []),
    ...counted('side-doubtful', read.filter(({ isSideDoubtful }) => isSideDoubtful).length),
    ...findMovement(results),
    ...counted('nothing-found', results.filter(({ marks }) => marks.length === 0).length),
    ...counted('unreadable', readings.filter(({ state }) => state === 'unreadable').length),
    ...findMissingSets(session),
    ...counted('waiting', read.filter(({ isWaiting }) => isWaiting).length),
  ];
}

function counted(
  kind: 'side-doubtful' | 'nothing-found' | 'unreadable' | 'waiting',
  sets: number,
): Finding[] {
  return sets > 0 ? [{ kind, sets }] : [];
}

function findSaid(
  session: Pick<ListedSession, 'check' | 'endedBecause' | 'wentOnAbove' | 'sets'>,
): Finding[] {
  const { check, endedBecause, wentOnAbove, sets } = session;
  const findings: Finding[] = [];
  if (check !== null && check.signs.length > 0) findings.push({ kind: 'signs', signs: check.signs });
  if (endedBecause !== null && endedBecause.reason !== 'sign') {
    const { reason, fell } = endedBecause;
    findings.push({ kind: 'stopped', reason, fell, hasBegun: sets.length > 0 });
  }
  const most = greatest(wentOnAbove, ({ score }) => score);
  if (most !== undefined)
    findings.push({ kind: 'went-on', score: most.score, limit: most.limit, times: wentOnAbove.length });
  return findings;
}

function findSilence({ silence, startedAt }: Pick<ListedSession, 'silence' | 'startedAt'>): Finding[] {
  if (silence === null) return [];
  const { reason, since } = silence;
  return [{ kind: 'silent', reason, days: Math.floor((Date.parse(startedAt) - Date.parse(since)) / dayMs) }];
}

/** What was taken back, what is settled, and what was opened again. */
function findAside({ id, check, settles, settlement, reopened }: Parameters<typeof findNeeds>[0]): Finding[] {
  const takenBack = check?.takenBack ?? [];
  const cleared = settles.find(({ by, visitId }) => by === 'professional' && visitId !== id);
  return [
    ...(takenBack.length > 0 ? [{ kind: 'taken-back' as const, signs: takenBack }] : []),
    ...(cleared === undefined ? [] : [{ kind: 'says-cleared' as const, who: cleared.who }]),
    ...(reopened === undefined ? [] : [{ kind: 'reopened' as const, who: reopened.by, at: reopened.at }]),
    ...(settlement === null
      ? []
      : [{ kind: 'settled' as const, by: settlement.by, who: settlement.who, at: settlement.at }]),
  ];
}

function findCutShort({ sets }: Pick<ListedSession, 'sets'>): Finding[] {
  const reasons = sets.flatMap(({ line: { cutShort } }) => (cutShort === null ? [] : [cutShort]));
  const [firstReason] = reasons;
  return firstReason === undefined ? [] : [{ kind: 'cut-short', sets: reasons.length, firstReason }];
}

function findMovement(results: readonly SetReport[]): Finding[] {
  const marks = results.flatMap((result) => result.marks);
  const unmeasured = marks.filter(({ verdict }) => verdict === 'not-measured').length;
  const outside = marks.filter(({ verdict }) => verdictSide(verdict) === 'out');
  const findings: Finding[] = [];
  if (outside.length > 0) {
    findings.push({
      kind: 'out-of-line',
      repetitions: outside.length,
      probable: outside.filter(({ verdict }) => verdict === 'probably-out').length,
      ofMeasured: marks.length - unmeasured,
      ways: distinct(outside.map(({ direction }) => direction)),
      measures: distinct(outside.map(({ measure }) => measure)),
    });
  }
  const untold = marks.filter(({ verdict }) => verdict === 'cant-tell').length;
  if (untold > 0 && untold * 2 > marks.length - unmeasured)
    findings.push({ kind: 'mostly-untold', repetitions: untold, ofMeasured: marks.length - unmeasured });
  if (unmeasured > 0 && unmeasured >= marks.length * poorViewShare) {
    const reasons = results.flatMap(({ mainReason }) => (mainReason === null ? [] : [mainReason]));
    const reason = mostFrequent(reasons);
    findings.push({ kind: 'not-measured', repetitions: unmeasured, of: marks.length, reason });
  }
  return findings;
}

function distinct<Value>(values: readonly (Value | null)[]): Value[] {
  return [...new Set(values.filter((value) => value !== null))];
}

/** A set cut in two when the camera stopped takes two lines, and counts once. */
function findMissingSets({
  sets,
  plannedSets,
  endedBecause,
  silence,
}: Pick<ListedSession, 'sets' | 'plannedSets' | 'endedBecause' | 'silence'>): Finding[] {
  // That nothing was done is told by why it did not begin.
  const isTold = silence !== null || endedBecause !== null;
  if (plannedSets === null || (sets.length === 0 && isTold)) return [];
  const done = new Set(sets.map(({ line: { item, side, number } }) => `${item} ${side} ${number}`)).size;
  return done < plannedSets ? [{ kind: 'sets-missing', done, of: plannedSets }] : [];
}
