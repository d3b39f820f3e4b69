import { findExercise } from '#core/exercises/exercises';
import type { SessionDocument, SessionSet } from './sessionDocument';
import { worseKnee } from './worseKnee';

/** What the schema can't check in a session document: parts that don't fit together; null where all is well. */
export function sessionFault(session: SessionDocument): string | null {
  const { startedAt, endedAt, sets, isUnfilmed, silence } = session;
  if (endedAt !== null && Date.parse(endedAt) < Date.parse(startedAt)) return 'it ends before it starts';
  const recordingIds = sets.flatMap(({ sessionId: recordingId }) =>
    recordingId === null ? [] : [recordingId],
  );
  if (new Set(recordingIds).size < recordingIds.length) return 'two of its sets name the same recording';
  if (isUnfilmed && recordingIds.length > 0) return 'it was not filmed, but names a recording';
  if (silence !== null && sets.length > 0) return 'it says why nothing was done, but has sets';
  const answers = answersFault(session);
  if (answers !== null) return answers;
  for (const [index, set] of sets.entries()) {
    const fault = setFault(set);
    if (fault !== null) return `set ${index + 1} ${fault}`;
  }
  return null;
}

function answersFault({ painBySide, painBefore, painAfter, check }: SessionDocument): string | null {
  if (painBySide !== null) {
    if (worseKnee(painBySide.before) !== painBefore) return 'its pain before is not that of its knees';
    if (worseKnee(painBySide.after) !== painAfter) return 'its pain after is not that of its knees';
  }
  const { signs = [], takenBack = [] } = check ?? {};
  if (signs.some((sign) => takenBack.includes(sign))) return 'a sign of it is both said and taken back';
  return null;
}

function setFault({
  task,
  sessionId: recordingId,
  prescribedRepetitions,
  heldMs,
}: SessionSet): string | null {
  if (findExercise(task).kind === 'task') {
    return heldMs === null ? null : 'has a hold time, but its task is not a hold';
  }
  if (recordingId !== null) return 'names a recording, but a hold is not measured';
  return prescribedRepetitions === null ? null : 'has repetitions, but is a hold';
}
