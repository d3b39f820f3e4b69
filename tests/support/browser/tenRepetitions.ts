import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { filmPerson } from '../syntheticPerson';
import { inventedRecording } from './inventedRecording';

/** Every second one far out of line, degrees. */
const peaks = [-3, 27];

/** A recording of ten repetitions by an invented person, without a video. */
export function tenRepetitions(): RecordingDocument {
  const setup = { task: 'split-stance-sit-to-stand', side: 'right' } as const;
  const { track } = filmPerson({
    ...setup,
    seed: 10,
    noisePx: 0.3,
    rateHz: 20,
    camera: { yawDeg: 0, distanceM: 12, focalPx: 6000 },
    repetitions: Array.from({ length: 10 }, (_, index) => ({ peakDeg: peaks[index % 2]!, movingMs: 2600 })),
  });
  return inventedRecording('8b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d10', '2026-04-20T06:05:00.000Z', setup, track);
}
