import { setPeakChange, type SetPeakChange } from '#core/change/setPeakChange';
import { compareConditions, type ConditionComparison } from '#core/conditions/compareConditions';
import type { SetConditions } from '#core/conditions/setConditions';
import type { SetPeak } from '#core/scoring/findSetPeak';
import { setConditions } from '#documents/session/setConditions';
import type { ListedRecording, ListedSession } from './listedSession';

export interface PeakChange extends SetPeakChange {
  earlierDeg: number;
  laterDeg: number;
  /** When the earlier set was done, ISO 8601. */
  earlierAt: string;
}

export type ChangeOfSet =
  | { kind: 'compared'; change: PeakChange }
  | { kind: 'unlike'; comparison: ConditionComparison; earlierAt: string };

/**
 * Whether the mean peak of a set differs by more than error from an earlier one.
 *
 * @returns  difference later - earlier, degrees, inward positive: 'lower' = less inward now
 */
export function peakChange(earlier: SetPeak, later: SetPeak, earlierAt: string): PeakChange {
  return {
    ...setPeakChange(earlier, later),
    earlierDeg: earlier.meanDeg,
    laterDeg: later.meanDeg,
    earlierAt,
  };
}

/**
 * The same set's change since the patient's last session that measured it.
 *
 * @param visits  of anybody, in any order
 * @returns  null for a recording of nobody, and where no earlier set of that task and side has a mean peak; 'unlike' where
 *   the two were not done and measured alike, so that they are not compared
 */
export function changeSinceLast(
  sessions: readonly ListedSession[],
  session: ListedSession,
  set: ListedRecording,
): ChangeOfSet | null {
  const later = peakOf(set);
  if (session.patient === '' || later === null) return null;
  const before = sessions
    .filter(({ patient, startedAt }) => patient === session.patient && startedAt < session.startedAt)
    .sort((a, b) => (a.startedAt < b.startedAt ? 1 : -1));
  for (const { sets, startedAt } of before) {
    const alike = sets.filter(({ line }) => line.task === set.line.task && line.side === set.line.side);
    const sameNumber = alike.find(({ line }) => line.number === set.line.number) ?? alike[0];
    const earlier = sameNumber === undefined ? null : peakOf(sameNumber);
    if (sameNumber === undefined || earlier === null) continue;
    const [then, now] = [conditionsOf(sameNumber), conditionsOf(set)];
    if (then === null || now === null) continue;
    const comparison = compareConditions(then, now);
    return comparison.differences.length > 0
      ? { kind: 'unlike', comparison, earlierAt: startedAt }
      : { kind: 'compared', change: peakChange(earlier, later, startedAt) };
  }
  return null;
}

function peakOf({ reading }: ListedRecording): SetPeak | null {
  return reading.state === 'read' ? reading.result.peak : null;
}

/** Null where nothing was measured. */
function conditionsOf({ line, reading, asked = null }: ListedRecording): SetConditions | null {
  if (reading.state !== 'read' || reading.course === undefined) return null;
  const { bendsFilmed, measuringVersion } = reading.course;
  return setConditions(line, { bendsFilmed, measuringVersion }, asked);
}
