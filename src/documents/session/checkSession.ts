import { findExercise } from '#core/exercises/exercises';
import { RecordingFileProblem } from '../reading/recordingFileProblem';
import type { SessionDocument, SessionSet } from './sessionDocument';

/**
 * Checks what the schema can't say of a visit document: parts that belong together fit.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function checkSession(session: SessionDocument): void {
  const fault = sessionFault(session);
  if (fault === null) return;
  throw new RecordingFileProblem(
    `This visit document is damaged: ${fault}. Save it again where it came from.`,
  );
}

function sessionFault({ startedAt, endedAt, sets }: SessionDocument): string | null {
  if (endedAt !== null && Date.parse(endedAt) < Date.parse(startedAt)) return 'it ends before it starts';
  const recordingIds = sets.flatMap(({ sessionId: recordingId }) =>
    recordingId === null ? [] : [recordingId],
  );
  if (new Set(recordingIds).size < recordingIds.length) return 'two of its sets name the same session';
  for (const [index, set] of sets.entries()) {
    const fault = setFault(set);
    if (fault !== null) return `set ${index + 1} ${fault}`;
  }
  return null;
}

function setFault({
  task,
  sessionId: recordingId,
  prescribedRepetitions,
  heldMs,
}: SessionSet): string | null {
  if (findExercise(task).kind === 'task') {
    return heldMs === null ? null : 'has a time held, which its task has not';
  }
  if (recordingId !== null) return 'names a session, and a hold is not measured';
  return prescribedRepetitions === null ? null : 'has repetitions, which a hold has not';
}
