import { trackPart, type KeypointTrack } from '#core/keypoints/keypointTrack';

/** The part of a track up to a time, as it arrives live. */
export function trackUpTo(track: KeypointTrack, untilMs: number): KeypointTrack {
  return trackPart(track, 0, track.timesMs.filter((timeMs) => timeMs <= untilMs).length);
}
