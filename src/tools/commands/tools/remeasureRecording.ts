import { measureCorrected } from '#core/correction/measureCorrected';
import { buildRecording } from '#documents/recording/buildRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';

/** Everything in a recording document except what is derived. */
export type ObservedRecording = Omit<RecordingDocument, 'format' | 'version' | 'derived'>;

/** Derives a recording's results again from its joints. */
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
