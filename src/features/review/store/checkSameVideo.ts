import { Problem } from '#core/problem';
import type { VideoFacts } from '#device/frames/frameSource';
import type { RecordingDocument } from '#documents/recording/recordingDocument';

/** A re-encoded copy may be this much longer or shorter, ms. */
const durationToleranceMs = 500;

/**
 * Makes sure that a video is the one that was measured; over another one every line would be in the wrong
 * place.
 *
 * @throws Problem  where picture size or duration differ
 */
export function checkSameVideo(facts: VideoFacts, measured: RecordingDocument['video']): void {
  const sameSize = facts.widthPx === measured.widthPx && facts.heightPx === measured.heightPx;
  if (sameSize && Math.abs(facts.durationMs - measured.durationMs) <= durationToleranceMs) return;
  throw new Problem(
    'video',
    `"${facts.fileName}" is not the video that was measured: it is ${describe(facts)}, ` +
      `and the measured one is ${describe(measured)}. Choose the video that this session was made from.`,
  );
}

function describe({
  widthPx,
  heightPx,
  durationMs,
}: Pick<VideoFacts, 'widthPx' | 'heightPx' | 'durationMs'>): string {
  return `${widthPx} by ${heightPx} pixels and ${(durationMs / 1000).toFixed(1)} seconds long`;
}
