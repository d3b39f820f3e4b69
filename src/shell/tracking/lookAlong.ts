import type { PoseDevice } from '#core/keypoints/poseModel';
import type { CloserFrame } from '#core/looks/closerLook';
import type { CarefulTracker } from '#device/pose/poseTracker';
import type { LookAlong } from '#device/tracking/trackVideo';

/**
 * A closer look on the way, where a graphics processor is fast enough for it. Elsewhere, and where its network can't be
 * loaded, there is none: it may follow, and the usual look is a measurement too.
 *
 * @param looks  gets what is seen, in the order of the frames
 */
export async function lookAlong(
  tracker: CarefulTracker,
  backend: PoseDevice['backend'],
  looks: CloserFrame[],
): Promise<LookAlong | undefined> {
  if (backend === 'wasm') return undefined;
  return tracker.loadSecond().then(
    () => ({ tracker, onLook: (look) => void looks.push(look) }),
    () => undefined,
  );
}
