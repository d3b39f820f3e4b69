import type { SetReading } from '../../inbox/inboxVisit';
import { setResult, type JudgedRepetition } from '../../inbox/setResult';
import { measuringVersion } from '../../measurement/measurement';
import { measureCorrected } from '../../correction/measureCorrected';
import type { Limits } from '../../protocol/limits';
import { sameLimits } from '../../protocol/sameLimits';
import type { LimitsSet } from '../../session/reviewSchema';
import type { SessionDocument } from '../../session/sessionDocument';
import { sessionTrack } from '../../session/sessionTrack';
import { withTakenLimits } from '../../session/withTakenLimits';
import { storageProblem } from '../../storage/storageProblem';
import type { Repository } from '../../storage/repository';
import { explainProblem } from '../explainProblem';
import { judgeAll } from '../recording';

/**
 * Reads what a session comes to; what can't be read is told in a sentence.
 *
 * @param taken  limits that it takes over, where nothing of its own stands against it
 */
export async function readSet(
  sessionId: string,
  taken: LimitsSet | null,
  { sessions }: Repository,
): Promise<SetReading> {
  try {
    const kept = await sessions.find(sessionId);
    if (kept === null) return { state: 'unreadable', sentence: storageProblem('missing').message };
    const { session, facts } = kept;
    return {
      state: 'read',
      result: setResult(repetitionsOf(withTakenLimits(session, taken), session.limits)),
      hasVideo: facts.video !== null,
      isWaiting: facts.fromVideo === 'waiting',
      ...((session.review?.reviewed ?? null) === null ? {} : { isReviewed: true }),
      ...((session.corrections ?? []).length === 0 ? {} : { isByHand: true }),
    };
  } catch (error) {
    return { state: 'unreadable', sentence: explainProblem(error, 'be read').sentence };
  }
}

/**
 * As the review will show them: measured anew where an older version measured them or other limits hold.
 *
 * @param judgedBy  the limits behind the judgements that it holds
 */
function repetitionsOf(session: SessionDocument, judgedBy: Limits): JudgedRepetition[] {
  const { derived, setup, limits } = session;
  if (derived.measuringVersion === measuringVersion && sameLimits(limits, judgedBy))
    return derived.repetitions;
  const { measurement, excluded } = measureCorrected(sessionTrack(session), setup, session.corrections ?? []);
  const judgements = judgeAll(measurement, limits);
  return measurement.repetitions.map((repetition, index) => ({
    ...repetition,
    ...(excluded[index] ? { excluded: excluded[index] } : {}),
    judgement: judgements[index]!,
  }));
}
