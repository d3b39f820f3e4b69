import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { measure } from '#core/measurement/measure';
import type { Setup } from '#core/measurement/measurement';
import { defaultLimits } from '#core/protocol/limits';
import { buildRecording } from '#documents/recording/buildRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';

/** A recording of an invented person at 20 frames a second, without a video; it says that it is invented. */
export function inventedRecording(
  id: string,
  createdAt: string,
  setup: Setup,
  track: KeypointTrack,
): RecordingDocument {
  return buildRecording({
    id,
    createdAt: new Date(createdAt),
    note: 'Invented: a stick figure, reckoned by a program; nobody was filmed.',
    limits: defaultLimits,
    video: {
      bytes: 0,
      codec: 'none',
      widthPx: track.widthPx,
      heightPx: track.heightPx,
      frameRateHz: 20,
      durationMs: track.timesMs.at(-1)!,
    },
    model: { name: 'BlazePose', size: 'full', weights: 'invented', backend: 'wasm' },
    track,
    measurement: measure(track, setup),
  });
}
