import type { SetReading } from '../rules/listedSession';
import { buildSetReport, type JudgedRepetition } from '../rules/buildSetReport';
import { measuringVersion } from '#core/measurement/measurement';
import { measureCorrected } from '#core/correction/measureCorrected';
import { sameLimits } from '#core/protocol/sameLimits';
import type { LimitsSet } from '#documents/recording/reviewSchema';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { withTakenLimits } from '#documents/recording/withTakenLimits';
import { storageProblem } from '#device/storage/storageProblem';
import type { Repository } from '#device/storage/repository';
import { explainProblem } from '#shell/explainProblem';
import { judgeAll } from '#shell/tracking/shownRecording';

/**
 * Reads what a session comes to; what can't be read is told in a sentence.
 *
 * @param taken  limits that it takes over, where nothing of its own stands against it
 */
export async function loadSet(
  recordingId: string,
  taken: LimitsSet | null,
  { recordings }: Repository,
): Promise<SetReading> {
  try {
    const kept = await recordings.findHead(recordingId);
    if (kept === null) return { state: 'unreadable', sentence: storageProblem('missing').message };
    const { facts } = kept;
    const recording = withTakenLimits(kept.recording, taken);
    const isAsJudged =
      recording.derived.measuringVersion === measuringVersion &&
      sameLimits(recording.limits, kept.recording.limits);
    const whole = isAsJudged ? null : await recordings.find(recordingId);
    const repetitions =
      whole === null ? recording.derived.repetitions : judgedAnew(withTakenLimits(whole.recording, taken));
    return {
      state: 'read',
      result: buildSetReport(repetitions),
      hasVideo: facts.video !== null,
      isWaiting: facts.fromVideo === 'waiting',
      ...((recording.review?.reviewed ?? null) === null ? {} : { isReviewed: true }),
      ...((recording.corrections ?? []).length === 0 ? {} : { isByHand: true }),
    };
  } catch (error) {
    return { state: 'unreadable', sentence: explainProblem(error, 'be read').sentence };
  }
}

/** As the review will show them, where an older version measured them or other limits hold now. */
function judgedAnew(recording: RecordingDocument): JudgedRepetition[] {
  const { setup, limits, corrections = [] } = recording;
  const { measurement, excluded } = measureCorrected(recordingTrack(recording), setup, corrections);
  const judgements = judgeAll(measurement, limits);
  return measurement.repetitions.map((repetition, index) => ({
    ...repetition,
    ...(excluded[index] ? { excluded: excluded[index] } : {}),
    judgement: judgements[index]!,
  }));
}
