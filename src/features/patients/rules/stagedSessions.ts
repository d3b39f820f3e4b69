import type { StagedSession, StagedSet } from '#documents/programme/stageCourseOf';
import type { ListedRecording, ListedSession } from '#features/sessions/rules/listedSession';

/** The listed sessions as the rules for what to do next need them. */
export function stagedSessions(sessions: readonly ListedSession[]): StagedSession[] {
  return sessions
    .filter(({ kind }) => kind === 'visit')
    .map((session) => ({ ...session, sets: session.sets.map(stagedSet) }));
}

function stagedSet({ line, reading, asked = null }: ListedRecording): StagedSet {
  if (reading.state !== 'read') return { line, asked, measured: null };
  const { marks, inLine } = reading.result;
  const peaksDeg = (reading.course?.points ?? []).map(({ valueDeg }) => valueDeg);
  return { line, asked, measured: { found: marks.length, inLine, peaksDeg } };
}
