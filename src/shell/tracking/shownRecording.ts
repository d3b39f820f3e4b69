import { usualSureness } from '#core/chance/grade';
import type { Correction } from '#core/correction/correction';
import { measureCorrected, type CorrectedMeasurement } from '#core/correction/measureCorrected';
import { frameCount, type KeypointTrack } from '#core/keypoints/keypointTrack';
import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';
import type { Measurement } from '#core/measurement/measurement';
import type { TimedSetup } from '#core/measurement/measureSet';
import type { Limits } from '#core/protocol/limits';
import { judge, type Judgement } from '#core/scoring/judge';
import type { VideoFacts } from '#device/frames/frameSource';
import { shortfallSentence } from '#device/frames/shortfallSentence';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';

export type RecordingOrigin = 'example' | 'video' | 'session';

/**
 * A recording with all that is known of each frame; it is replaced, never changed.
 */
export interface ShownRecording extends Readonly<CorrectedMeasurement> {
  readonly origin: RecordingOrigin;
  /** Name of the file that it came from; shown, never saved. */
  readonly fileName: string;
  /** The pictures; null where a recording document was opened without them. */
  readonly video: File | null;
  readonly videoFacts: RecordingDocument['video'];
  readonly model: RecordingDocument['observed']['model'];
  /** For demo data: that it is invented. */
  readonly note: string;
  /** The sentence to show when the file gave fewer frames than it announced; null where it gave all. */
  readonly shortfall: string | null;
  /** The joints as they were seen; `track` is what was measured, with corrections. */
  readonly observed: KeypointTrack;
  /** Task and leg before any correction. */
  readonly setup: TimedSetup;
}

/** A recording that was tracked just now. */
export function trackedRecording(
  parts: Pick<ShownRecording, 'origin' | 'video' | 'note' | 'observed'> & {
    corrections: readonly Correction[];
    facts: VideoFacts;
    setup: TimedSetup;
    size: PoseModel;
    device: PoseDevice;
    weights: string;
  },
): ShownRecording {
  const { origin, video, note, observed, facts, setup, size, device, weights } = parts;
  return {
    origin,
    fileName: facts.fileName,
    video,
    videoFacts: recordingFacts(facts),
    model: { name: 'BlazePose', size, weights, backend: device.backend },
    note,
    shortfall: shortfallSentence(facts, frameCount(observed)),
    observed,
    setup,
    ...measureCorrected(observed, setup, parts.corrections),
  };
}

/** A recording from its document, measured afresh from the joints that it holds. */
export function recordingRecording(
  document: RecordingDocument,
  { origin, fileName, video }: Pick<ShownRecording, 'origin' | 'fileName' | 'video'>,
): ShownRecording {
  const observed = recordingTrack(document);
  const { setup, corrections = [] } = document;
  return {
    origin,
    fileName,
    video,
    videoFacts: document.video,
    model: document.observed.model,
    note: document.note,
    shortfall: null,
    observed,
    setup,
    ...measureCorrected(observed, setup, corrections),
  };
}

/** The same joints, measured with other corrections or for another task. */
export function measuredAgain(
  recording: ShownRecording,
  setup: TimedSetup,
  corrections: readonly Correction[],
): ShownRecording {
  return { ...recording, setup, ...measureCorrected(recording.observed, setup, corrections) };
}

/** The same recording with its joints as more looks see them. */
export function seenCloser(
  recording: ShownRecording,
  observed: KeypointTrack,
  corrections: readonly Correction[],
): ShownRecording {
  return { ...recording, observed, ...measureCorrected(observed, recording.setup, corrections) };
}

/** One judgement per repetition, in their order. */
export function judgeAll(measurement: Measurement, limits: Limits, sureness = usualSureness): Judgement[] {
  return measurement.repetitions.map((repetition) => judge(repetition, measurement, limits, sureness));
}

/** What a recording document keeps of a video: nothing that could name a person. */
export function recordingFacts(facts: VideoFacts): RecordingDocument['video'] {
  const { fileBytes, codec, widthPx, heightPx, durationMs, frameRateHz } = facts;
  return { bytes: fileBytes, codec, widthPx, heightPx, durationMs, frameRateHz };
}
