import { calendarDay } from '#core/calendarDay';
import { ownError, type OwnError, type Repeat, type RepeatKind } from '#core/reliability/ownError';
import type { RepeatRecord } from '#documents/patient/patientDocument';
import type { ListedSession } from '#features/sessions/rules/listedSession';

/** A set that was filmed again, with the mean inward peaks of both, degrees. */
export interface PracticeRepeat extends Repeat {
  kind: RepeatKind;
}

/** The repeats of one patient of which both sets have a mean. */
export function practiceRepeats(
  repeats: readonly RepeatRecord[],
  sessions: readonly ListedSession[],
): PracticeRepeat[] {
  const means = new Map(
    sessions.flatMap(({ startedAt, sets }) =>
      sets.flatMap(({ line: { sessionId: id }, reading }) =>
        id === null || reading.state !== 'read' || reading.result.peak === null
          ? []
          : [[id, { deg: reading.result.peak.meanDeg, day: calendarDay(startedAt) }] as const],
      ),
    ),
  );
  return repeats.flatMap((repeat) => {
    const [first, second] = [means.get(repeat.first), means.get(repeat.second)];
    if (first === undefined || second === undefined) return [];
    const kind = first.day === second.day ? ('same-day' as const) : ('other-day' as const);
    return [{ first: first.deg, second: second.deg, kind }];
  });
}

/** The practice's error between days, from its repeats of other days. */
export function errorBetweenDays(repeats: readonly PracticeRepeat[] | null): OwnError {
  return ownError((repeats ?? []).filter(({ kind }) => kind === 'other-day'));
}
