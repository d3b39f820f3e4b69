import type { Sureness } from '#core/chance/grade';
import type { Repository } from '#device/storage/repository';
import type { Cell } from '#documents/csv/csvText';
import { repetitionCells, repetitionsTable } from '#documents/csv/repetitionsCsv';
import { sessionsCsv } from '#documents/csv/sessionsCsv';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { isoDay } from '#words/dateWords';
import { feelingOf } from '../rules/buildCourse';
import { eachMeasuredSet, oldestFirst } from './eachMeasuredSet';

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
  const rows: Cell[][] = [];
  await eachMeasuredSet(kept, sessions, onProgress, ({ session, line, recording, measured }) => {
    rows.push(
      ...repetitionCells({
        ...measured,
        limits: recording.limits,
        sureness,
        note: recording.note,
        origin: {
          patient: session.patient,
          date: isoDay(session.startedAt),
          sessionId: session.kind === 'visit' ? session.id : null,
          set: line.number,
        },
      }),
    );
  });
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
