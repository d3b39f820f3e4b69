import { distancePx } from '../geometry/point';
import { medianOf } from '../signal/quantileOf';
import { keypointCount, keypointNames } from './keypointNames';
import { frameCount, type KeypointTrack } from './keypointTrack';
import { hasPerson } from './observedPoint';

/** Nobody's hips travel faster than this between two frames, torso lengths a second: common practice, no source. */
const fastestTorsosPerSecond = 6;
/** Jitter of the points themselves, torso lengths. */
const shakeTorsos = 0.35;
/** A stretch belongs to the same person when it is at most this much larger or smaller ... */
const sameSizeRatio = 1.25;
/** ... and begins or ends at most this far from where the person was, torso lengths. */
const samePlaceTorsos = 1.2;

interface Stretch {
  from: number;
  to: number;
  torsoPx: number;
}

/**
 * Frames in which the tracker follows somebody else than in most of the recording.
 *
 * The recording is cut wherever the hips jump. Stretches that differ from the longest one in size or place
 * are somebody else.
 *
 * @returns  one a frame: true = somebody else
 */
export function findJumps(track: KeypointTrack): boolean[] {
  const jumped = new Array<boolean>(frameCount(track)).fill(false);
  const stretches = cutAtLeaps(track);
  const main = stretches.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a), stretches[0]!);
  if (main === undefined) return jumped;
  const place = { before: centre(track, main.from), after: centre(track, main.to) };
  const at = stretches.indexOf(main);
  for (const stretch of stretches.slice(at + 1)) {
    if (same(stretch, main, place.after, centre(track, stretch.from)))
      place.after = centre(track, stretch.to);
    else jumped.fill(true, stretch.from, stretch.to + 1);
  }
  for (const stretch of stretches.slice(0, at).reverse()) {
    if (same(stretch, main, place.before, centre(track, stretch.to)))
      place.before = centre(track, stretch.from);
    else jumped.fill(true, stretch.from, stretch.to + 1);
  }
  return jumped;
}

function same(stretch: Stretch, main: Stretch, here: Centre, there: Centre): boolean {
  const ratio = stretch.torsoPx / main.torsoPx;
  const distance = distancePx(here, there) / main.torsoPx;
  return ratio < sameSizeRatio && ratio > 1 / sameSizeRatio && distance < samePlaceTorsos;
}

function cutAtLeaps(track: KeypointTrack): Stretch[] {
  const stretches: Stretch[] = [];
  let last = -1;
  let torsosPx: number[] = [];
  const close = () => {
    const open = stretches.at(-1);
    if (open !== undefined) open.torsoPx = medianOf(torsosPx) ?? 1;
  };
  let before: Centre | null = null;
  for (let frame = 0; frame < frameCount(track); frame++) {
    if (!hasPerson(track, frame)) continue;
    const here = centre(track, frame);
    if (before === null || leaps(before, here, track.timesMs[frame]! - track.timesMs[last]!)) {
      close();
      torsosPx = [];
      stretches.push({ from: frame, to: frame, torsoPx: here.torsoPx });
    }
    torsosPx.push(here.torsoPx);
    stretches.at(-1)!.to = frame;
    last = frame;
    before = here;
  }
  close();
  return stretches;
}

function leaps(before: Centre, here: Centre, afterMs: number): boolean {
  const torsos = distancePx(before, here) / Math.max(1, before.torsoPx);
  return torsos > Math.max(shakeTorsos, (fastestTorsosPerSecond * afterMs) / 1000);
}

interface Centre {
  x: number;
  y: number;
  torsoPx: number;
}

const [leftHip, rightHip, leftShoulder, rightShoulder] = (
  ['left_hip', 'right_hip', 'left_shoulder', 'right_shoulder'] as const
).map((name) => keypointNames.indexOf(name)) as [number, number, number, number];

/** Middle of the hips and length from there to the middle of the shoulders, px. */
function centre({ xPx, yPx }: KeypointTrack, frame: number): Centre {
  const from = frame * keypointCount;
  const x = (xPx[from + leftHip]! + xPx[from + rightHip]!) / 2;
  const y = (yPx[from + leftHip]! + yPx[from + rightHip]!) / 2;
  const shoulderX = (xPx[from + leftShoulder]! + xPx[from + rightShoulder]!) / 2;
  const shoulderY = (yPx[from + leftShoulder]! + yPx[from + rightShoulder]!) / 2;
  return { x, y, torsoPx: Math.hypot(shoulderX - x, shoulderY - y) };
}
