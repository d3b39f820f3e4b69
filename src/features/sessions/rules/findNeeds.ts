import { mostFrequent, type SetReport } from './buildSetReport';
import type { Finding } from './finding';
import { findPain } from './findPain';
import type { ListedSession } from './listedSession';

/** From this share of repetitions without a verdict on, the view counts as too poor. Our own choice, no source. */
export const poorViewShare = 1 / 4;

/**
 * What in a session needs a look, the most pressing first: pain, then a set cut short, then how the knee
 * moved, then what could not be measured. Sets that are still being read add nothing yet.
 */
export function findNeeds(session: Omit<ListedSession, 'kind' | 'patient'>): Finding[] {
  const readings = session.sets.map(({ reading }) => reading);
  const read = readings.flatMap((reading) => (reading.state === 'read' ? [reading] : []));
  const results = read.map(({ result }) => result);
  return [
    ...findPain(session),
    ...findCutShort(session),
    ...findMovement(results),
    ...counted('nothing-found', results.filter(({ marks }) => marks.length === 0).length),
    ...counted('unreadable', readings.filter(({ state }) => state === 'unreadable').length),
    ...findMissingSets(session),
    ...counted('waiting', read.filter(({ isWaiting }) => isWaiting).length),
  ];
}

function counted(kind: 'nothing-found' | 'unreadable' | 'waiting', sets: number): Finding[] {
  return sets > 0 ? [{ kind, sets }] : [];
}

function findCutShort({ sets }: Pick<ListedSession, 'sets'>): Finding[] {
  const reasons = sets.flatMap(({ line: { cutShort } }) => (cutShort === null ? [] : [cutShort]));
  const [firstReason] = reasons;
  return firstReason === undefined ? [] : [{ kind: 'cut-short', sets: reasons.length, firstReason }];
}

function findMovement(results: readonly SetReport[]): Finding[] {
  const marks = results.flatMap((result) => result.marks);
  const unmeasured = marks.filter(({ verdict }) => verdict === 'not-measured').length;
  const outside = marks.filter(({ verdict }) => verdict === 'out-of-line');
  const findings: Finding[] = [];
  if (outside.length > 0) {
    findings.push({
      kind: 'out-of-line',
      repetitions: outside.length,
      ofMeasured: marks.length - unmeasured,
      ways: distinct(outside.map(({ direction }) => direction)),
      measures: distinct(outside.map(({ measure }) => measure)),
    });
  }
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
function findMissingSets({ sets, plannedSets }: Pick<ListedSession, 'sets' | 'plannedSets'>): Finding[] {
  if (plannedSets === null) return [];
  const done = new Set(sets.map(({ line: { item, side, number } }) => `${item} ${side} ${number}`)).size;
  return done < plannedSets ? [{ kind: 'sets-missing', done, of: plannedSets }] : [];
}
