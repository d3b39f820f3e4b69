import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { RecordingDocument } from './recordingDocument';

/** The joints in a recording document, ready to be measured again. */
export function recordingTrack({
  observed,
  video,
}: Pick<RecordingDocument, 'observed' | 'video'>): KeypointTrack {
  return {
    widthPx: video.widthPx,
    heightPx: video.heightPx,
    timesMs: Float64Array.from(observed.timesMs),
    xPx: Float32Array.from(observed.xPx),
    yPx: Float32Array.from(observed.yPx),
    score: Float32Array.from(observed.score),
    ...(observed.closer === undefined ? {} : { closer: observed.closer }),
  };
}
