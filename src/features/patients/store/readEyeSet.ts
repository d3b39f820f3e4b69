import type { Limits } from '#core/protocol/limits';
import type { Repository } from '#device/storage/repository';
import { withTakenLimits } from '#documents/recording/withTakenLimits';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { takenLimits } from '#features/sessions/rules/takenLimits';
import { recordingRecording, type ShownRecording } from '#shell/tracking/shownRecording';

/** A set to be judged by eye. */
export interface EyeSet {
  recordingId: string;
  recording: ShownRecording;
  /** Those that its result is judged by. */
  limits: Limits;
  /** Complete repetitions that count: their place in the recording, and from when to when they are shown, ms. */
  repetitions: { index: number; fromMs: number; toMs: number }[];
}

/** @returns  null where the recording or its video is no longer kept here */
export async function readEyeSet(
  { recordings, videos }: Pick<Repository, 'recordings' | 'videos'>,
  sessions: readonly ListedSession[],
  recordingId: string,
): Promise<EyeSet | null> {
  const found = await recordings.find(recordingId);
  const name = found?.facts.video ?? null;
  const video = name === null ? null : await videos.read(name);
  if (found === null || video === null) return null;
  const kept = withTakenLimits(found.recording, takenLimits(sessions, recordingId));
  const recording = recordingRecording(kept, { origin: 'session', fileName: '', video });
  const repetitions = recording.measurement.repetitions.flatMap(({ completeness, events }, index) =>
    completeness === 'complete' && (recording.excluded[index] ?? null) === null
      ? [{ index, fromMs: events.startMs, toMs: events.endMs }]
      : [],
  );
  return { recordingId, recording, limits: kept.limits, repetitions };
}
