import { keypointCount, keypointNames, type KeypointName } from '../keypoints/keypointNames';
import type { KeypointTrack } from '../keypoints/keypointTrack';
import { leastScore } from '../keypoints/observedPoint';
import { quantileOf } from '../signal/quantileOf';
import { longestQuantile } from '../view/liftLeg';
import { secondJoints, type CloserFrame } from './closerLook';

/** A look that puts a joint farther from the usual one than this share of a shank has mistaken it for another. */
const farthestShare = 0.25;
/** How much the second network counts beside the first; the two pull a knee in opposite directions (docs/models.md). */
export const secondWeight = 0.6;

/** Feet are read from both passes of the first network; the second does not know them. */
const footPoints = ['left_heel', 'right_heel', 'left_foot_index', 'right_foot_index'] as const;

/** A point, px; null where a look did not find it. */
type Found = { x: number; y: number } | null;

/**
 * Moves the joints of the legs to where several looks together see them. In frames looked at more closely, hip,
 * knee and ankle are the weighted mean of both networks, each the mean of a picture and its mirror image; heel
 * and toe the mean of the first network's two. By how much that differs from the usual joint is interpolated in
 * time, and added to every frame.
 *
 * @param track  as the usual look saw it; does not mutate
 * @param closer  in the order of their frames
 * @param weight  of the second network, 0 to 1
 * @returns  the same track where no frame was looked at again; scores stay as they are
 */
export function combineLooks(
  track: KeypointTrack,
  closer: readonly CloserFrame[],
  weight = secondWeight,
): KeypointTrack {
  const shankPx = longestShankPx(track);
  if (closer.length === 0 || shankPx === null) return track;
  const combined: KeypointTrack = {
    ...track,
    xPx: track.xPx.slice(),
    yPx: track.yPx.slice(),
    closer: {
      network: 'MoveNet Thunder',
      frames: closer.length,
      untilMs: track.timesMs[closer.at(-1)!.frame]!,
    },
  };
  const farthestPx = farthestShare * shankPx;
  for (const name of [...secondJoints, ...footPoints]) {
    const point = keypointNames.indexOf(name);
    const shifts: Shift[] = [];
    for (const look of closer) {
      const usual = usualPoint(track, look.frame, point);
      if (usual === null) continue;
      const near = (found: Found) =>
        found !== null && Math.hypot(found.x - usual.x, found.y - usual.y) <= farthestPx ? found : null;
      const first = middle(usual, near(rowPoint(look.mirrored, point)));
      const second = middle(
        near(secondPoint(look.second, name)),
        near(secondPoint(look.secondMirrored, name)),
      );
      if (first === null) continue;
      const share = second === null ? 0 : weight;
      const to = second ?? first;
      shifts.push({
        timeMs: track.timesMs[look.frame]!,
        x: first.x + share * (to.x - first.x) - usual.x,
        y: first.y + share * (to.y - first.y) - usual.y,
      });
    }
    addShifts(combined, point, shifts);
  }
  return combined;
}

interface Shift {
  timeMs: number;
  x: number;
  y: number;
}

/** Adds shifts to one point of every frame, in a straight line between two of them; the nearest one outside. */
function addShifts(
  { timesMs, xPx, yPx, score }: KeypointTrack,
  point: number,
  shifts: readonly Shift[],
): void {
  if (shifts.length === 0) return;
  let next = 0;
  timesMs.forEach((timeMs, frame) => {
    while (next < shifts.length && shifts[next]!.timeMs < timeMs) next++;
    const after = shifts[Math.min(next, shifts.length - 1)]!;
    const before = shifts[Math.max(0, next - 1)]!;
    const spanMs = after.timeMs - before.timeMs;
    const share = spanMs > 0 ? Math.min(1, Math.max(0, (timeMs - before.timeMs) / spanMs)) : 0;
    const at = frame * keypointCount + point;
    if (!(score[at]! > 0)) return;
    xPx[at]! += before.x + share * (after.x - before.x);
    yPx[at]! += before.y + share * (after.y - before.y);
  });
}

function usualPoint({ xPx, yPx, score }: KeypointTrack, frame: number, point: number): Found {
  const at = frame * keypointCount + point;
  return score[at]! >= leastScore ? { x: xPx[at]!, y: yPx[at]! } : null;
}

function rowPoint(row: Float32Array | null, place: number): Found {
  if (row === null || !(row[place * 3 + 2]! > 0)) return null;
  return { x: row[place * 3]!, y: row[place * 3 + 1]! };
}

function secondPoint(row: Float32Array, name: KeypointName): Found {
  const place = secondJoints.findIndex((joint) => joint === name);
  return place < 0 ? null : rowPoint(row, place);
}

/** The middle of two points; the one that was found where the other was not. */
function middle(a: Found, b: Found): Found {
  return a === null || b === null ? (a ?? b) : { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** How long a shank looks at its longest, px; null where none was seen. */
function longestShankPx(track: KeypointTrack): number | null {
  const lengths: number[] = [];
  for (const side of ['left', 'right'] as const) {
    const [knee, ankle] = [keypointNames.indexOf(`${side}_knee`), keypointNames.indexOf(`${side}_ankle`)];
    for (let frame = 0; frame < track.timesMs.length; frame++) {
      const [from, to] = [usualPoint(track, frame, knee), usualPoint(track, frame, ankle)];
      if (from !== null && to !== null) lengths.push(Math.hypot(to.x - from.x, to.y - from.y));
    }
  }
  return quantileOf(lengths, longestQuantile) ?? null;
}
