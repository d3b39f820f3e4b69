import { trackPart, type KeypointTrack } from '#core/keypoints/keypointTrack';

/** The frames of the last given milliseconds; shares the track's memory. */
export function lastPart(track: KeypointTrack, spanMs: number): KeypointTrack {
  const endMs = track.timesMs.at(-1) ?? 0;
  const from = Math.max(
    0,
    track.timesMs.findIndex((timeMs) => timeMs >= endMs - spanMs - 1e-6),
  );
  return trackPart(track, from);
}
