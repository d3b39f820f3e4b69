import { findTask } from '#core/exercises/exercises';
import { distancePx } from '#core/geometry/point';
import type { KeypointName } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { observedPoint } from '#core/keypoints/observedPoint';
import type { Setup } from '#core/measurement/measurement';
import { otherSide } from '#core/protocol/side';
import { createSortedSamples } from '#core/signal/createSortedSamples';
import { longestQuantile } from '#core/view/liftLeg';

/** The movement that makes repetitions, as one picture shows it. */
export interface SeenMovement {
  /** Height of the hips, or how far the free foot is out, px; null where unseen. */
  movementPx: number | null;
  /** Thigh plus shank of the working leg, from all pictures so far, px; null where not seen yet. */
  legLengthPx: number | null;
}

/** @returns  a function from one frame, as a single-frame track, to what it shows */
export function createMovementReader({ task, side }: Setup): (frame: KeypointTrack) => SeenMovement {
  const thighs = createSortedSamples();
  const shanks = createSortedSamples();
  const { shape } = findTask(task);
  return (frame) => {
    const [hip, knee, ankle] = (['hip', 'knee', 'ankle'] as const).map((joint) =>
      seenAt(frame, `${side}_${joint}`),
    );
    if (hip && knee && ankle) {
      thighs.add(distancePx(hip, knee));
      shanks.add(distancePx(knee, ankle));
    }
    const thigh = thighs.quantile(longestQuantile);
    const shank = shanks.quantile(longestQuantile);
    const other = seenAt(frame, `${otherSide(side)}_${shape === 'reach' ? 'ankle' : 'hip'}`);
    const own = shape === 'reach' ? ankle : hip;
    const movement = (a: Place, b: Place) => (shape === 'reach' ? Math.abs(a.x - b.x) : -(a.y + b.y) / 2);
    return {
      movementPx: own && other ? movement(own, other) : null,
      legLengthPx: thigh === undefined || shank === undefined ? null : thigh + shank,
    };
  };
}

interface Place {
  x: number;
  y: number;
}

/** Where a point is in a track's only frame, by the review's own rule of what counts as seen. */
function seenAt(frame: KeypointTrack, name: KeypointName): Place | null {
  const { xPx, yPx, problems } = observedPoint(frame, name, [false]);
  return problems[0] === null ? { x: xPx[0]!, y: yPx[0]! } : null;
}
