import { median } from 'd3-array';
import { keypointCount, keypointNames, type KeypointName } from './keypointNames';
import { frameCount, type KeypointTrack } from './keypointTrack';
import { hasPerson } from './observedPoint';

/** Nobody's hips travel faster than this between two frames, torso lengths a second: common practice, no source. */
const fastestTorsosPerSecond = 6;
/** Shake of the points themselves, torso lengths. */
const shakeTorsos = 0.35;
/** A stretch belongs to the same person when it is at most this much larger or smaller ... */
const sameSizeRatio = 1.25;
/** ... and begins or ends at most so far from where the person was, torso lengths. */
const samePlaceTorsos = 1.2;

interface Stretch {
  from: number;
  to: number;
  torsoPx: number;
}

/**
 * Frames in which the tracker follows somebody else than in most of the recording.
 *
 * The recording is cut wherever the hips leap; stretches of another size or in another place than the longest one
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
  const distance = Math.hypot(there.x - here.x, there.y - here.y) / main.torsoPx;
  return ratio < sameSizeRatio && ratio > 1 / sameSizeRatio && distance < samePlaceTorsos;
}

function cutAtLeaps(track: KeypointTrack): Stretch[] {
  const stretches: Stretch[] = [];
  let last = -1;
  let torsosPx: number[] = [];
  const close = () => {
    const open = stretches.at(-1);
    if (open !== undefined) open.torsoPx = median(torsosPx) ?? 1;
  };
  for (let frame = 0; frame < frameCount(track); frame++) {
    if (!hasPerson(track, frame)) continue;
    const here = centre(track, frame);
    if (last < 0 || leaps(track, last, frame, here)) {
      close();
      torsosPx = [];
      stretches.push({ from: frame, to: frame, torsoPx: here.torsoPx });
    }
    torsosPx.push(here.torsoPx);
    stretches.at(-1)!.to = frame;
    last = frame;
  }
  close();
  return stretches;
}

function leaps(track: KeypointTrack, last: number, frame: number, here: Centre): boolean {
  const before = centre(track, last);
  const seconds = (track.timesMs[frame]! - track.timesMs[last]!) / 1000;
  const torsos = Math.hypot(here.x - before.x, here.y - before.y) / Math.max(1, before.torsoPx);
  return torsos > Math.max(shakeTorsos, fastestTorsosPerSecond * seconds);
}

interface Centre {
  x: number;
  y: number;
  torsoPx: number;
}

/** Middle of the hips and length from there to the middle of the shoulders, px. */
function centre(track: KeypointTrack, frame: number): Centre {
  const hips = middle(track, frame, 'left_hip', 'right_hip');
  const shoulders = middle(track, frame, 'left_shoulder', 'right_shoulder');
  return { ...hips, torsoPx: Math.hypot(shoulders.x - hips.x, shoulders.y - hips.y) };
}

function middle(
  track: KeypointTrack,
  frame: number,
  a: KeypointName,
  b: KeypointName,
): { x: number; y: number } {
  const [i, j] = [a, b].map((name) => frame * keypointCount + keypointNames.indexOf(name)) as [
    number,
    number,
  ];
  return { x: (track.xPx[i]! + track.xPx[j]!) / 2, y: (track.yPx[i]! + track.yPx[j]!) / 2 };
}
