import type { SetReading } from '../rules/inboxVisit';
import { setResult, type JudgedRepetition } from '../rules/setResult';
import { measuringVersion } from '#core/measurement/measurement';
import { measureCorrected } from '#core/correction/measureCorrected';
import { sameLimits } from '#core/protocol/sameLimits';
import type { LimitsSet } from '#documents/recording/reviewSchema';
import type { SessionDocument } from '#documents/recording/sessionDocument';
import { sessionTrack } from '#documents/recording/sessionTrack';
import { withTakenLimits } from '#documents/recording/withTakenLimits';
import { storageProblem } from '#device/storage/storageProblem';
import type { Repository } from '#device/storage/repository';
import { explainProblem } from '#shell/explainProblem';
import { judgeAll } from '#shell/tracking/recording';

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
    const kept = await sessions.findHead(sessionId);
    if (kept === null) return { state: 'unreadable', sentence: storageProblem('missing').message };
    const { facts } = kept;
    const session = withTakenLimits(kept.session, taken);
    const isAsJudged =
      session.derived.measuringVersion === measuringVersion &&
      sameLimits(session.limits, kept.session.limits);
    const whole = isAsJudged ? null : await sessions.find(sessionId);
    const repetitions =
      whole === null ? session.derived.repetitions : judgedAnew(withTakenLimits(whole.session, taken));
    return {
      state: 'read',
      result: setResult(repetitions),
      hasVideo: facts.video !== null,
      isWaiting: facts.fromVideo === 'waiting',
      ...((session.review?.reviewed ?? null) === null ? {} : { isReviewed: true }),
      ...((session.corrections ?? []).length === 0 ? {} : { isByHand: true }),
    };
  } catch (error) {
    return { state: 'unreadable', sentence: explainProblem(error, 'be read').sentence };
  }
}

/** As the review will show them, where an older version measured them or other limits hold now. */
function judgedAnew(session: SessionDocument): JudgedRepetition[] {
  const { setup, limits, corrections = [] } = session;
  const { measurement, excluded } = measureCorrected(sessionTrack(session), setup, corrections);
  const judgements = judgeAll(measurement, limits);
  return measurement.repetitions.map((repetition, index) => ({
    ...repetition,
    ...(excluded[index] ? { excluded: excluded[index] } : {}),
    judgement: judgements[index]!,
  }));
}
