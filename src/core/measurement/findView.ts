import type { Task } from '../exercises/exercises';
import { otherSide, type Side } from '../protocol/side';
import type { BendsView } from '../view/bendsView';
import type { CameraRoll } from './cameraRoll';
import { hipsAtJoint } from './hipsAtJoint';
import type { PictureSize } from './pictureLeg';
import type { RestMoments } from './restMoments';
import { seeView, type View } from './seeView';
import type { SmoothPoints } from './smoothPoints';
import { viewedLeg } from './viewedLeg';

/** What the view is estimated from, apart from the points. */
export interface ViewFacts {
  size: PictureSize;
  focalPx: number;
  task: Pick<Task, 'viewSigns' | 'onBothFeet'>;
  /** The working side. */
  side: Side;
  /** Already removed from the points. */
  roll: CameraRoll;
  moments: RestMoments;
  /** 1 a sample where the person stands; left out where no moment is certain to be standing. */
  standing?: Uint8Array | undefined;
  bends?: BendsView | undefined;
  /** Whether the points are the joints themselves. */
  isExact?: boolean | undefined;
}

/** Yaw and hips depend on each other; after this many rounds neither moves any more. */
const hipRounds = 4;
/** A yaw that has moved by less than this has settled, degrees: the next round would move it by a sixth of that. */
const settledDeg = 0.02;

/**
 * How the body is turned from the camera, and where its hip joints are behind their marks: each is needed for
 * the other, so both are found in a few rounds.
 *
 * @param marks  level, as the network gives them
 * @returns  points with hips at their joints, and the view; null where the working leg was never seen in full
 */
export function findView(marks: SmoothPoints, facts: ViewFacts): { points: SmoothPoints; view: View | null } {
  const { size, focalPx, task, side, roll, moments, standing, bends, isExact } = facts;
  const look = (points: SmoothPoints): View | null => {
    const leg = (whose: Side) => viewedLeg(points, whose, size, focalPx, standing);
    const working = leg(side);
    if (working === null) return null;
    return seeView(working, leg(otherSide(side)), task, side, focalPx, roll, moments, bends);
  };
  return settleHips(marks, { size, focalPx, isExact }, (points) => ({ points, view: look(points) }));
}

/**
 * Looks at the points again and again, each time with the hips where the view before puts them.
 *
 * @param look  what is seen with the hips at some place; the first time at their marks
 * @returns  what was seen last
 */
export function settleHips<Seen extends { view: View | null }>(
  marks: SmoothPoints,
  { size, focalPx, isExact = false }: Pick<ViewFacts, 'size' | 'focalPx' | 'isExact'>,
  look: (points: SmoothPoints) => Seen,
): Seen {
  let seen = look(marks);
  for (let round = 1; round < hipRounds && seen.view !== null && !isExact; round++) {
    const { yaw, working } = seen.view;
    seen = look(hipsAtJoint(marks, size, { yawDeg: yaw.yawDeg, focalPx, shankPx: working.segments.shank }));
    if (Math.abs((seen.view?.yaw.yawDeg ?? 0) - yaw.yawDeg) < settledDeg) break;
  }
  return seen;
}
