import type { Sureness } from '#core/chance/grade';
import { measureCorrected } from '#core/correction/measureCorrected';
import type { Repository } from '#device/storage/repository';
import type { Cell } from '#documents/csv/csvText';
import { repetitionCells, repetitionsTable } from '#documents/csv/repetitionsCsv';
import { sessionsCsv } from '#documents/csv/sessionsCsv';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { withTakenLimits } from '#documents/recording/withTakenLimits';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { takenLimits } from '#features/sessions/rules/takenLimits';
import { isoDay } from '#words/dateWords';
import { feelingOf } from '../rules/buildCourse';

/**
 * Every repetition of a patient's measured sets as CSV, the oldest session first. Each set is measured from its joints
 * and judged by the limits that its review would show; one that can't be read is left out.
 *
 * @param sessions  of one patient, in any order
 * @param onProgress  called before each set; what it returns is waited for
 */
export async function patientRepetitions(
  kept: Pick<Repository, 'recordings'>,
  sessions: readonly ListedSession[],
  sureness: Sureness,
  onProgress: (done: number, total: number) => Promise<void> = () => Promise.resolve(),
): Promise<string> {
  const sets = oldestFirst(sessions).flatMap((session) =>
    session.sets.flatMap(({ line, reading }) =>
      line.sessionId === null || reading.state !== 'read' ? [] : [{ session, line, id: line.sessionId }],
    ),
  );
  const rows: Cell[][] = [];
  for (const [index, { session, line, id }] of sets.entries()) {
    await onProgress(index, sets.length);
    const found = await kept.recordings.find(id);
    if (found === null) continue;
    const recording = withTakenLimits(found.recording, takenLimits(sessions, id));
    const { setup, limits, note, corrections = [] } = recording;
    rows.push(
      ...repetitionCells({
        ...measureCorrected(recordingTrack(recording), setup, corrections),
        limits,
        sureness,
        note,
        origin: {
          patient: session.patient,
          date: isoDay(session.startedAt),
          sessionId: session.kind === 'visit' ? session.id : null,
          set: line.number,
        },
      }),
    );
  }
  return repetitionsTable(rows);
}

/** A patient's sessions as CSV, the oldest first. */
export function patientSessions(sessions: readonly ListedSession[], note: string): string {
  return sessionsCsv(
    oldestFirst(sessions)
      .filter(({ kind }) => kind === 'visit')
      .map((session) => {
        const { during, nextDay } = feelingOf(session, sessions);
        return {
          ...session,
          date: isoDay(session.startedAt),
          planId: session.plan?.id ?? null,
          painDuring: during,
          painNextDay: nextDay,
          setsDone: session.sets.length,
          setsPlanned: session.plannedSets,
          note,
        };
      }),
  );
}

function oldestFirst(sessions: readonly ListedSession[]): ListedSession[] {
  return [...sessions].sort((a, b) => Date.parse(a.startedAt) - Date.parse(b.startedAt));
}
