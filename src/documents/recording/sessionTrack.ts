import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { SessionDocument } from './sessionDocument';

/** The joints that a session document holds, ready to be measured again. */
export function sessionTrack({
  observed,
  video,
}: Pick<SessionDocument, 'observed' | 'video'>): KeypointTrack {
  return {
    widthPx: video.widthPx,
    heightPx: video.heightPx,
    timesMs: Float64Array.from(observed.timesMs),
    xPx: Float32Array.from(observed.xPx),
    yPx: Float32Array.from(observed.yPx),
    score: Float32Array.from(observed.score),
  };
}
