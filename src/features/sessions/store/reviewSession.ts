import { findExercise } from '#core/exercises/exercises';
import { otherSide as sideOpposite } from '#core/protocol/side';
import type { ReviewSession } from '#features/review/store/keptReview';
import { dayWords } from '#words/dateWords';
import { formatValue } from '#words/formatMeasure';
import { countRange } from '#words/setCountWords';
import type { ListedSession } from '../rules/listedSession';

/** Most recordings offered for comparison. */
const mostOthers = 30;

/** What a review needs of the session that a recording belongs to; null for one that belongs to none. */
export function reviewSession(sessions: readonly ListedSession[], recordingId: string): ReviewSession | null {
  const session = sessions.find(({ sets }) => sets.some(({ line }) => line.sessionId === recordingId));
  const own = session?.sets.find(({ line }) => line.sessionId === recordingId);
  if (session === undefined || own === undefined || session.kind !== 'visit') return null;
  const { line, planned } = own;
  const { id, painBefore, painAfter, painLimit, effort, remark, patient } = session;
  const ofPatient = sessions.filter(
    (other) => other.id === session.id || (patient !== '' && other.patient === patient),
  );
  const others = ofPatient.flatMap(({ startedAt, sets }) =>
    sets.flatMap(({ line: other, reading }) => {
      const isHold = findExercise(other.task).kind === 'hold';
      if (other.sessionId === null || other.sessionId === recordingId || isHold) return [];
      // One that is still being read can be viewed all the same.
      if (other.task !== line.task || reading.state === 'unreadable') return [];
      const title = `${dayWords(startedAt)}, ${other.side} leg, set ${other.number}`;
      return [{ recordingId: other.sessionId, title, isOtherSide: other.side !== line.side }];
    }),
  );
  const words = otherSideWords(session, line);
  const otherSide = words === null ? null : { side: sideOpposite(line.side), words };
  const feeling = { painBefore, painAfter, painLimit, effort, remark };
  return { id, patient, ...feeling, line, planned, otherSide, others: others.slice(0, mostOthers) };
}

/** Repetitions in line and mean peak of the same session's last set of that task with the other leg. */
function otherSideWords({ sets }: ListedSession, line: ReviewSession['line']): string | null {
  const other = sets.findLast(({ line: { task, side } }) => task === line.task && side !== line.side);
  if (other?.reading.state !== 'read') return null;
  const { inLine, peak } = other.reading.result;
  if (inLine === null) return 'not measured';
  const count = `${countRange(inLine)} in line`;
  return peak === null ? count : `${count}, mean peak ${formatValue('knee-angle', peak.meanDeg)}`;
}
