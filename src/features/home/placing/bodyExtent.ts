import { deviation } from 'd3-array';
import type { Point } from '#core/geometry/point';
import { findJumps } from '#core/keypoints/findJumps';
import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import { frameCount, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { hasPerson } from '#core/keypoints/observedPoint';
import { quantileOf } from '#core/signal/quantileOf';

/** In less than this share of the frames somebody only passed by. */
const leastPersonShare = 0.6;
/** Fewest frames, and shortest time, that say anything, ms. */
const leastFrames = 4;
const leastSpanMs = 700;
/** All but this share of the frames lie within the extent. */
const wildShare = 0.05;

const bodyJoints = [
  'left_ankle',
  'right_ankle',
  'left_hip',
  'right_hip',
  'left_shoulder',
  'right_shoulder',
] as const satisfies readonly KeypointName[];
type BodyJoint = (typeof bodyJoints)[number];

/**
 * How far a body reaches in the picture, px; points that the network guesses to lie outside of the picture count, since
 * they say which way the body is cut off.
 */
export interface Extent {
  /** Height of the eyes; the crown lies a little above. */
  eyesPx: number;
  bottomPx: number;
  leftPx: number;
  rightPx: number;
  /** Each at its median. */
  joints: Record<BodyJoint, Point>;
  /** Middle of both ankles, hips and shoulders. */
  ankles: Point;
  hips: Point;
  shoulders: Point;
  /** How far the joint that moves most wanders, one standard deviation, px. */
  wanderPx: number;
  /** Whether the person's left hip and shoulder stand right in the picture, as they do facing the camera. */
  isFacing: boolean;
}

/** @returns  null where nobody is seen, or not for long enough */
export function bodyExtent(track: KeypointTrack): Extent | null {
  const frames = frameCount(track);
  const jumped = findJumps(track);
  const good = Array.from({ length: frames }, (_, frame) => frame).filter(
    (frame) => hasPerson(track, frame) && jumped[frame] !== true,
  );
  const spanMs = (track.timesMs.at(-1) ?? 0) - (track.timesMs[0] ?? 0);
  if (good.length < Math.max(leastFrames, leastPersonShare * frames) || spanMs < leastSpanMs) return null;

  const at = (of: Float32Array, name: KeypointName, frame: number) =>
    of[frame * keypointCount + keypointNames.indexOf(name)]!;
  const over = (share: number, value: (frame: number) => number) => quantileOf(good.map(value), share)!;
  const all = (of: Float32Array, frame: number) =>
    of.subarray(frame * keypointCount, (frame + 1) * keypointCount);
  const median = (name: KeypointName): Point => ({
    x: over(0.5, (f) => at(track.xPx, name, f)),
    y: over(0.5, (f) => at(track.yPx, name, f)),
  });
  const joints = Object.fromEntries(bodyJoints.map((name) => [name, median(name)])) as Extent['joints'];
  const middle = (joint: 'ankle' | 'hip' | 'shoulder'): Point => {
    const [left, right] = [joints[`left_${joint}`], joints[`right_${joint}`]];
    return { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 };
  };
  const leftwardPx = (['hip', 'shoulder'] as const)
    .map((joint) => joints[`left_${joint}`].x - joints[`right_${joint}`].x)
    .reduce((a, b) => a + b);
  return {
    eyesPx: over(wildShare, (f) => Math.min(at(track.yPx, 'left_eye', f), at(track.yPx, 'right_eye', f))),
    bottomPx: over(1 - wildShare, (f) => Math.max(...all(track.yPx, f))),
    leftPx: over(wildShare, (f) => Math.min(...all(track.xPx, f))),
    rightPx: over(1 - wildShare, (f) => Math.max(...all(track.xPx, f))),
    joints,
    ankles: middle('ankle'),
    hips: middle('hip'),
    shoulders: middle('shoulder'),
    wanderPx: Math.max(
      ...bodyJoints.map((name) =>
        spreadPx(
          good,
          (f) => at(track.xPx, name, f),
          (f) => at(track.yPx, name, f),
        ),
      ),
    ),
    isFacing: leftwardPx > 0,
  };
}

function spreadPx(
  frames: readonly number[],
  x: (frame: number) => number,
  y: (frame: number) => number,
): number {
  return Math.hypot(deviation(frames, x) ?? 0, deviation(frames, y) ?? 0);
}
