import { frameCount, type KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Measurement } from '#core/measurement/measurement';
import { measureSet } from '#core/measurement/measureSet';
import type { VideoFacts } from '#device/frames/frameSource';
import type { SetStart } from '#device/storage/keptSchemas';
import { buildRecording } from '#documents/recording/buildRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingFacts } from './shownRecording';

/**
 * The recording of a set, from the joints tracked live.
 *
 * @param track  in px of the picture that the set began with
 * @param facts  of the set's video; null where there is none that can be read
 * @param measurement  of the track, where it was measured already
 */
export function buildSetRecording(
  start: SetStart,
  track: KeypointTrack,
  facts: VideoFacts | null,
  measurement: Measurement = measureSet(track, start.setup),
): RecordingDocument {
  const { id, startedAt, limits, note, model, widthPx, heightPx } = start;
  const video = facts === null ? factsOfTrack(track) : recordingFacts(facts);
  return buildRecording({
    id,
    createdAt: new Date(startedAt),
    note,
    limits,
    // The joints' picture: what the recorder wrote may be of another size.
    video: { ...video, widthPx, heightPx },
    model,
    track,
    measurement,
  });
}

function factsOfTrack(track: KeypointTrack): RecordingDocument['video'] {
  const { widthPx, heightPx, timesMs } = track;
  const durationMs = timesMs.at(-1) ?? 0;
  const spanMs = durationMs - (timesMs[0] ?? 0);
  const frameRateHz = spanMs > 0 ? ((frameCount(track) - 1) * 1000) / spanMs : 0;
  return { bytes: 0, codec: 'none', widthPx, heightPx, durationMs, frameRateHz };
}
