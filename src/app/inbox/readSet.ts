import type { SetReading } from '../../inbox/inboxVisit';
import { setResult, type JudgedRepetition } from '../../inbox/setResult';
import { measuringVersion } from '../../measurement/measurement';
import { measureCorrected } from '../../correction/measureCorrected';
import type { SessionDocument } from '../../session/sessionDocument';
import { sessionTrack } from '../../session/sessionTrack';
import { storageProblem } from '../../storage/storageProblem';
import type { Repository } from '../../storage/repository';
import { explainProblem } from '../explainProblem';
import { judgeAll } from '../recording';

/** Reads what a session comes to; what can't be read is told in a sentence. */
export async function readSet(sessionId: string, { sessions }: Repository): Promise<SetReading> {
  try {
    const kept = await sessions.find(sessionId);
    if (kept === null) return { state: 'unreadable', sentence: storageProblem('missing').message };
    const { session, facts } = kept;
    return {
      state: 'read',
      result: setResult(repetitionsOf(session)),
      hasVideo: facts.video !== null,
      isWaiting: facts.fromVideo === 'waiting',
      ...((session.review?.reviewed ?? null) === null ? {} : { isReviewed: true }),
      ...((session.corrections ?? []).length === 0 ? {} : { isByHand: true }),
    };
  } catch (error) {
    return { state: 'unreadable', sentence: explainProblem(error, 'be read').sentence };
  }
}

/** As the review will show them: measured anew where an older version measured them. */
function repetitionsOf(session: SessionDocument): JudgedRepetition[] {
  const { derived, setup, limits } = session;
  if (derived.measuringVersion === measuringVersion) return derived.repetitions;
  const { measurement, excluded } = measureCorrected(sessionTrack(session), setup, session.corrections ?? []);
  const judgements = judgeAll(measurement, limits);
  return measurement.repetitions.map((repetition, index) => ({
    ...repetition,
    ...(excluded[index] ? { excluded: excluded[index] } : {}),
    judgement: judgements[index]!,
  }));
}
