import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';

/** The part of a track up to a time, as it arrives live. */
export function trackUpTo(
  { timesMs, xPx, yPx, score, ...size }: KeypointTrack,
  untilMs: number,
): KeypointTrack {
  const frames = timesMs.filter((timeMs) => timeMs <= untilMs).length;
  const points = frames * keypointCount;
  return {
    ...size,
    timesMs: timesMs.subarray(0, frames),
    xPx: xPx.subarray(0, points),
    yPx: yPx.subarray(0, points),
    score: score.subarray(0, points),
  };
}
