import { measureCorrected } from '#core/correction/measureCorrected';
import { buildRecording } from '#documents/recording/buildRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';

/** Everything of a session document but what is derived. */
export type ObservedRecording = Omit<RecordingDocument, 'format' | 'version' | 'derived'>;

/** Derives a session's results anew from the joints that it holds. */
export function remeasureRecording(before: ObservedRecording): RecordingDocument {
  const track = recordingTrack(before);
  const { measurement, excluded } = measureCorrected(track, before.setup, before.corrections ?? []);
  return buildRecording({
    ...before,
    createdAt: new Date(before.createdAt),
    model: before.observed.model,
    track,
    measurement,
    excluded,
  });
}
