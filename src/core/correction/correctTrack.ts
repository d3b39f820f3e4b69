import { keypointCount, keypointNames } from '../keypoints/keypointNames';
import { frameCount, type KeypointTrack } from '../keypoints/keypointTrack';
import { hasPerson } from '../keypoints/observedPoint';
import { mirrorTrack } from './mirrorTrack';
import type { PointChange, SettledCorrections } from './settleCorrections';

/** Corrected frames of a joint no farther apart than this are joined by a straight line, ms: our own choice. */
export const longestCorrectionBridgeMs = 1000;
/**
 * The correction fades out over this time before the first and after the last corrected frame, ms: our own
 * choice.
 */
export const fadeMs = 200;

/**
 * A track with points set by hand. Between two corrected frames close in time, a joint moves in a straight
 * line; outside them, the shift fades out. Points set by hand have full confidence. Frames without a person
 * are unchanged.
 *
 * @returns  the same track where there is nothing to correct; does not mutate
 */
export function correctTrack(
  track: KeypointTrack,
  { points, isMirrored }: Pick<SettledCorrections, 'points' | 'isMirrored'>,
): KeypointTrack {
  const placed = points.length === 0 ? track : withPoints(track, points);
  return isMirrored ? mirrorTrack(placed) : placed;
}

function withPoints(track: KeypointTrack, changes: readonly PointChange[]): KeypointTrack {
  const corrected = {
    ...track,
    xPx: track.xPx.slice(),
    yPx: track.yPx.slice(),
    score: track.score.slice(),
  };
  for (const point of new Set(changes.map((change) => change.point))) {
    const anchors = changes.filter((change) => change.point === point).sort((a, b) => a.timeMs - b.timeMs);
    const index = keypointNames.indexOf(point);
    for (let frame = 0; frame < frameCount(track); frame++) {
      if (!hasPerson(track, frame)) continue;
      const at = frame * keypointCount + index;
      const place = placeAt(track, anchors, index, frame);
      if (place === null) continue;
      corrected.xPx[at] = place.x;
      corrected.yPx[at] = place.y;
      corrected.score[at] = 1;
    }
  }
  return corrected;
}

/** Position of a joint in a frame, px; null where no correction applies. */
function placeAt(
  track: KeypointTrack,
  anchors: readonly PointChange[],
  index: number,
  frame: number,
): { x: number; y: number } | null {
  const timeMs = track.timesMs[frame]!;
  const x = (anchor: PointChange) => anchor.xNorm * track.widthPx;
  const y = (anchor: PointChange) => anchor.yNorm * track.heightPx;
  const before = anchors.findLast((anchor) => anchor.timeMs <= timeMs);
  const after = anchors.find((anchor) => anchor.timeMs >= timeMs);
  if (before && after && after.timeMs - before.timeMs <= longestCorrectionBridgeMs) {
    const spanMs = after.timeMs - before.timeMs;
    const share = spanMs === 0 ? 0 : (timeMs - before.timeMs) / spanMs;
    return { x: mix(x(before), x(after), share), y: mix(y(before), y(after), share) };
  }
  const seen = frame * keypointCount + index;
  if (!(track.score[seen]! > 0)) return null;
  // Where both apply, the nearer one wins.
  const near = [before, after]
    .filter((anchor) => anchor !== undefined)
    .sort((a, b) => Math.abs(a.timeMs - timeMs) - Math.abs(b.timeMs - timeMs))[0];
  if (near === undefined) return null;
  const weight = 1 - Math.abs(near.timeMs - timeMs) / fadeMs;
  const own = nearestFrameTo(track, near.timeMs) * keypointCount + index;
  if (weight <= 0 || !(track.score[own]! > 0)) return null;
  return {
    x: track.xPx[seen]! + weight * (x(near) - track.xPx[own]!),
    y: track.yPx[seen]! + weight * (y(near) - track.yPx[own]!),
  };
}

function nearestFrameTo({ timesMs }: KeypointTrack, timeMs: number): number {
  const next = timesMs.findIndex((other) => other >= timeMs);
  if (next < 0) return timesMs.length - 1;
  return next > 0 && timeMs - timesMs[next - 1]! < timesMs[next]! - timeMs ? next - 1 : next;
}

function mix(a: number, b: number, share: number): number {
  return a + share * (b - a);
}
