import { findExercise } from '#core/exercises/exercises';
import type { SessionDocument, SessionSet } from './sessionDocument';

/** What the schema can't say of a session document: parts that don't fit together; null where all is well. */
export function sessionFault({ startedAt, endedAt, sets }: SessionDocument): string | null {
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
