import { deviation } from 'd3-array';
import { findTask } from '#core/exercises/exercises';
import type { KeypointName } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { unseenRoll } from '#core/measurement/cameraRoll';
import { findView } from '#core/measurement/findView';
import type { PictureSize } from '#core/measurement/pictureLeg';
import { restMoments } from '#core/measurement/restMoments';
import { seeBody } from '#core/measurement/seenBody';
import { missingAt, pointAt, smoothPoints, type SmoothPoints } from '#core/measurement/smoothPoints';
import { legLengthPx, viewedLeg } from '#core/measurement/viewedLeg';
import { sides, type Side } from '#core/protocol/side';
import { focalLengthPx } from '#core/view/focalLengthPx';
import type { YawEstimate } from '#core/view/fuseCues';
import type { SegmentsPx } from '#core/view/liftLeg';
import { message } from '#words/messages/message';
import { lastPart } from './lastPart';

/** How long it takes, ms. */
export const quietStandMs = 2000;
/** A joint that wanders by more than this share of leg length, one standard deviation, moves: common practice. */
const stillSpread = 0.015;
/** A joint has to be seen in this share of the time. */
const leastSeenShare = 0.9;
/** Thighs that look shorter than this share of the shanks lie on a seat or are bent. */
const leastThighToShank = 0.8;

export type QuietStand =
  | {
      problem: null;
      /** Lengths of each leg's segments in the picture, px. */
      segmentsPx: Record<Side, SegmentsPx>;
      /** Knee angle of each leg square to the body while it stands, degrees, inward positive. */
      standingOffsetDeg: Record<Side, number>;
      /** Trembling of the joints after smoothing, one standard deviation, in shank lengths; the larger of both legs. */
      jitter: number;
      /** The body's yaw to the camera, inferred from both feet. */
      yaw: YawEstimate;
    }
  | {
      problem: 'too-short' | 'unseen' | 'not-upright' | 'moved';
      /** What to do, to be spoken; left and right are the person's own. */
      sentence: string;
    };

/** What may not move, from the feet up. */
const watched = ['ankle', 'knee', 'hip', 'shoulder'] as const;
type Joint = (typeof watched)[number];

/**
 * Reads a quiet stand on both feet: the last two seconds of the window, in which nothing may move.
 *
 * @param window  joints of two seconds or more; what is older than two seconds is left out
 * @returns  the body's own measures, or why they can't be taken
 */
export function quietStand(window: KeypointTrack): QuietStand {
  const track = lastPart(window, quietStandMs);
  const points = smoothPoints(track);
  if ((points.timesMs.at(-1) ?? 0) - (points.timesMs[0] ?? 0) < quietStandMs * leastSeenShare) {
    return { problem: 'too-short', sentence: message('stand.still') };
  }
  const unseen = findJoint(points, ({ seenShare }) => seenShare < leastSeenShare);
  const focalPx = focalLengthPx(track.widthPx, track.heightPx);
  const leg = (side: Side) => viewedLeg(points, side, track, focalPx);
  const [left, right] = [leg('left'), leg('right')];
  if (unseen !== null || left === null || right === null) {
    const sentence =
      unseen === null
        ? message('stand.legs-unseen')
        : message('stand.unseen', { part: `${unseen.side}_${unseen.joint}` });
    return { problem: 'unseen', sentence };
  }
  const legs = { left, right };
  if (sides.some((side) => legs[side].segments.thigh < leastThighToShank * legs[side].segments.shank)) {
    return { problem: 'not-upright', sentence: message('stand.upright') };
  }
  const legPx = legLengthPx(left);
  const moved = findJoint(points, ({ spreadPx }) => spreadPx > stillSpread * legPx);
  if (moved !== null) {
    const isWhole = moved.joint === 'shoulder' || moved.joint === 'hip';
    const sentence = isWhole
      ? message('stand.moved')
      : message('stand.part-moved', { part: `${moved.side}_${moved.joint}` });
    return { problem: 'moved', sentence };
  }
  const [ofLeft, ofRight] = [standing(points, track, 'left'), standing(points, track, 'right')];
  if (ofLeft === null || ofRight === null)
    return { problem: 'unseen', sentence: message('stand.legs-unseen') };
  return {
    problem: null,
    segmentsPx: { left: ofLeft.segments, right: ofRight.segments },
    standingOffsetDeg: { left: ofLeft.offsetDeg, right: ofRight.offsetDeg },
    jitter: Math.max(left.jitter, right.jitter),
    yaw: ofLeft.yaw,
  };
}

/** What the measuring code reads off one leg that stands still; null where it was never seen in full. */
function standing(
  marks: SmoothPoints,
  size: PictureSize,
  side: Side,
): { segments: SegmentsPx; offsetDeg: number; yaw: YawEstimate } | null {
  // A dip that never begins: upright all along.
  const task = findTask('two-legged-bend');
  const samples = marks.timesMs.length;
  const moments = restMoments(task, new Float64Array(samples), samples);
  const focalPx = focalLengthPx(size.widthPx, size.heightPx);
  const { points, view } = findView(marks, { size, focalPx, task, side, roll: unseenRoll, moments });
  if (view === null) return null;
  const { segments } = view.working;
  return { segments, offsetDeg: seeBody(points, view, side).standingOffsetDeg, yaw: view.yaw };
}

interface JointRecord {
  seenShare: number;
  spreadPx: number;
}

/** The first joint, from the feet up, of which something is true. */
function findJoint(
  points: SmoothPoints,
  isSo: (record: JointRecord) => boolean,
): { side: Side; joint: Joint } | null {
  for (const joint of watched) {
    for (const side of sides) {
      if (isSo(recordOf(points, `${side}_${joint}`))) return { side, joint };
    }
  }
  return null;
}

function recordOf(points: SmoothPoints, name: KeypointName): JointRecord {
  const point = points.point(name);
  const x: number[] = [];
  const y: number[] = [];
  const samples = points.timesMs.length;
  for (let i = 0; i < samples; i++) {
    if (missingAt([point], i) !== 0) continue;
    const here = pointAt(point, i);
    x.push(here.x);
    y.push(here.y);
  }
  return {
    seenShare: x.length / Math.max(1, samples),
    spreadPx: Math.hypot(deviation(x) ?? 0, deviation(y) ?? 0),
  };
}
