import { toDegrees } from '../geometry/degrees';
import { medianOf } from '../signal/quantileOf';
import { middleAt, missingAt, type SmoothPoints } from './smoothPoints';

/** How far the camera is rolled to one side. */
export interface CameraRoll {
  /** Degrees; positive = upright things lean to the right in the picture. */
  rollDeg: number;
  /** One standard deviation, degrees. */
  sdDeg: number;
}

/**
 * In quiet standing the trunk is upright to about this, degrees: 1 on rendered recordings (docs/view.md), more in people
 * who favour a side.
 */
const trunkSdDeg = 2;
/** A camera set up with some care is level to about this, degrees: common practice, no source. */
const levelSdDeg = 1.5;

/** What is known of a camera before anybody has stood in front of it. */
export const unseenRoll: CameraRoll = { rollDeg: 0, sdDeg: levelSdDeg };

/**
 * Estimates the camera's roll from the trunk in quiet standing, weighted against a camera set up level.
 *
 * @param upright  1 a sample where the person stands
 */
export function cameraRoll(points: SmoothPoints, upright: Uint8Array): CameraRoll {
  const hips = [points.point('left_hip'), points.point('right_hip')] as const;
  const shoulders = [points.point('left_shoulder'), points.point('right_shoulder')] as const;
  const trunk = [...hips, ...shoulders];
  const leansDeg: number[] = [];
  upright.forEach((counts, i) => {
    if (counts === 0 || missingAt(trunk, i) !== 0) return;
    const pelvis = middleAt(hips, i);
    const girdle = middleAt(shoulders, i);
    leansDeg.push(toDegrees(Math.atan2(girdle.x - pelvis.x, pelvis.y - girdle.y)));
  });
  const leanDeg = medianOf(leansDeg);
  if (leanDeg === undefined) return unseenRoll;
  const [ofTrunk, ofLevel] = [1 / trunkSdDeg ** 2, 1 / levelSdDeg ** 2];
  return { rollDeg: (leanDeg * ofTrunk) / (ofTrunk + ofLevel), sdDeg: 1 / Math.sqrt(ofTrunk + ofLevel) };
}
