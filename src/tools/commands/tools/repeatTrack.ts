import type { KeypointTrack } from '#core/keypoints/keypointTrack';

/** A recording repeated n times without a pause. */
export function repeatTrack(track: KeypointTrack, times: number): KeypointTrack {
  const { timesMs, xPx, yPx, score } = track;
  const frames = timesMs.length;
  const firstMs = timesMs[0] ?? 0;
  const lengthMs = frames < 2 ? 0 : ((timesMs[frames - 1]! - firstMs) * frames) / (frames - 1);
  const again = (values: Float32Array) =>
    Float32Array.from({ length: values.length * times }, (_, at) => values[at % values.length]!);
  return {
    ...track,
    timesMs: Float64Array.from(
      { length: frames * times },
      (_, frame) => timesMs[frame % frames]! + Math.floor(frame / frames) * lengthMs,
    ),
    xPx: again(xPx),
    yPx: again(yPx),
    score: again(score),
  };
}
