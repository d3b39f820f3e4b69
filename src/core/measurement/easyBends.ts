import { findTask } from '../exercises/exercises';
import { trackPart, type KeypointTrack } from '../keypoints/keypointTrack';
import { otherSide, sides } from '../protocol/side';
import type { FootPath } from '../segmentation/findRepetitions';
import { medianOf } from '../signal/quantileOf';
import type { BendsView } from '../view/bendsView';
import { segmentsPx } from '../view/liftLeg';
import { feetPaths } from './feetPaths';
import type { Setup } from './measurement';
import { pictureLeg } from './pictureLeg';
import { smoothPoints } from './smoothPoints';
import { legLengthPx } from './viewedLeg';
import { viewFromBends } from './viewFromBends';

/** A foot that has moved by this share of leg length from where it stood has begun the set. */
const movedShare = 0.08;
/** Feet whose ankles differ in height by more than this share of leg length do not both stand on the floor. */
const levelShare = 0.08;
/** Two bends take at least this long, ms. */
const leastMs = 2500;
/** Where the feet stand is read over this time at the start, ms. */
const settledMs = 500;

/** Two-legged bends at the beginning of a recording. */
export interface EasyBends {
  view: BendsView;
  /** When the last of them was over, ms: what comes later is the set. */
  endMs: number;
}

/**
 * Looks for two easy two-legged bends at the beginning of a recording, where the task lets only one foot tell
 * the view.
 *
 * @param points  the track's, where they have been smoothed before
 * @returns  null where there are none, where the task needs none, and where bends are known from before
 */
export function easyBends(
  track: KeypointTrack,
  setup: Setup,
  points = smoothPoints(track),
): EasyBends | null {
  if (setup.bends !== undefined || !findTask(setup.task).viewSigns.includes('stance-foot')) return null;
  const segments = segmentsPx(pictureLeg(points, setup.side, track));
  if (segments === null) return null;
  const feet = feetPaths(points, legLengthPx({ segments }));
  const settled = points.timesMs.findIndex((timeMs) => timeMs - points.timesMs[0]! > settledMs);
  if (settled < 0) return null;
  const [left, right] = feet.map((path) => placeAt(path, settled)) as [Place, Place];
  if (Math.abs(left.y - right.y) > levelShare) return null;
  const free = feet[sides.indexOf(otherSide(setup.side))]!;
  const stood = otherSide(setup.side) === 'left' ? left : right;
  const moved = free.x.findIndex((x, i) => Math.hypot(x - stood.x, free.y[i]! - stood.y) > movedShare);
  if (moved < 0) return null;
  const movedMs = points.timesMs[moved]!;
  if (movedMs - points.timesMs[0]! < leastMs) return null;
  const found = viewFromBends(trackPart(track, 0, track.timesMs.filter((timeMs) => timeMs < movedMs).length));
  return found.view === null ? null : { view: found.view, endMs: found.endMs };
}

interface Place {
  x: number;
  y: number;
}

function placeAt({ x, y }: FootPath, until: number): Place {
  return { x: medianOf(x.subarray(0, until))!, y: medianOf(y.subarray(0, until))! };
}
