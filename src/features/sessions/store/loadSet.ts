import type { Sureness } from '#core/chance/grade';
import { measureCorrected } from '#core/correction/measureCorrected';
import { createQueue } from '#core/createQueue';
import { isSideDoubtful, measuringVersion } from '#core/measurement/measurement';
import { sameLimits } from '#core/protocol/sameLimits';
import { gradeAgain } from '#core/scoring/judge';
import type { Repository } from '#device/storage/repository';
import { storageProblem } from '#device/storage/storageProblem';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';
import type { LimitsSet } from '#documents/recording/reviewSchema';
import { withTakenLimits } from '#documents/recording/withTakenLimits';
import { explainProblem } from '#shell/explainProblem';
import { judgeAll } from '#shell/tracking/shownRecording';
import { buildSetReport, type JudgedRepetition } from '../rules/buildSetReport';
import type { SetReading } from '../rules/listedSession';
import { peakPoints } from '../rules/peakPoints';

/** With their joints, recordings are megabytes: those that are measured again are read one after another. */
const measuring = createQueue();

/**
 * Reads the result of a recording; a sentence says why it can't be read.
 *
 * @param taken  limits carried over to it, unless it has its own
 * @param sureness  how sure it has to be before a side is named
 */
export async function loadSet(
  recordingId: string,
  taken: LimitsSet | null,
  sureness: Sureness,
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
    const judgedAgain = isAsJudged
      ? null
      : await measuring.add(async () => {
          const whole = await recordings.find(recordingId);
          return whole === null ? null : judgedAnew(withTakenLimits(whole.recording, taken));
        });
    const { repetitions, isSideDoubtful: isDoubtful = false } = judgedAgain ?? recording.derived;
    const graded = repetitions.map((one) => ({ ...one, judgement: gradeAgain(one.judgement, sureness) }));
    return {
      state: 'read',
      result: buildSetReport(graded, recording.limits),
      course: {
        points: peakPoints(graded),
        limits: recording.limits,
        bendsFilmed: recording.setup.bends !== undefined,
        measuringVersion,
      },
      hasVideo: facts.video !== null,
      isWaiting: facts.fromVideo === 'waiting',
      ...((recording.review?.reviewed ?? null) === null ? {} : { isReviewed: true }),
      ...(isDoubtful ? { isSideDoubtful: true } : {}),
      ...((recording.corrections ?? []).length === 0 ? {} : { isByHand: true }),
    };
  } catch (error) {
    return { state: 'unreadable', sentence: explainProblem(error, 'read').sentence };
  }
}

/** As the review will show them, where an older version measured them or other limits apply now. */
function judgedAnew(recording: RecordingDocument): {
  repetitions: JudgedRepetition[];
  isSideDoubtful: boolean;
} {
  const { setup, limits, corrections = [] } = recording;
  const { measurement, excluded } = measureCorrected(recordingTrack(recording), setup, corrections);
  const judgements = judgeAll(measurement, limits);
  const repetitions = measurement.repetitions.map((repetition, index) => ({
    ...repetition,
    ...(excluded[index] ? { excluded: excluded[index] } : {}),
    judgement: judgements[index]!,
  }));
  return { repetitions, isSideDoubtful: isSideDoubtful(measurement) };
}
