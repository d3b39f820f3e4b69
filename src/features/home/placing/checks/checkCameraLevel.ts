import { toDegrees } from '#core/geometry/degrees';
import { message } from '#words/messages/message';
import type { Sight } from '../sightOf';
import { good, move, notYet, unknown, type Check } from './placingFinding';

/** Rolled by more than this, other measures than the knee angle leave their bands (docs/view.md), degrees. */
const widestDeg = { tight: 3, loose: 4 };
/** Ankles farther apart in height than this share of leg length are not those of somebody who stands on both feet. */
const evenAnkles = 0.08;
/** A body that wanders by more than this share of leg length does not stand quietly. */
const stillSpread = 0.03;
/** How far each line of a quietly standing body is off upright or level, one standard deviation, degrees: by eye. */
const lineSdDeg = { axis: 1.5, hips: 3, shoulders: 3 };

/**
 * Camera level: inferred only from the lines of somebody who stands quietly on both feet; a person who leans
 * looks like a camera tipped the other way. Unknown for somebody seated.
 */
export const checkCameraLevel: Check = (sight, wasGood) => {
  if (sight.extent === null || sight.legPx === null) return notYet();
  const rollDeg = readRollDeg(sight);
  if (rollDeg === null)
    return unknown(message('placing.level-unknown'), message('placing.level-unknown.short'));
  if (Math.abs(rollDeg) <= widestDeg[wasGood ? 'loose' : 'tight'])
    return good(message('placing.level'), message('placing.level.short'));
  // Leaning right in the picture as filmed, the body leans to its own left: the camera's edge there is too high.
  const lift = rollDeg > 0 ? 'right' : 'left';
  return move(
    message('placing.tipped', { side: lift }),
    message('placing.tipped.short'),
    lift === 'right' ? 'tip-left' : 'tip-right',
  );
};

/**
 * How far what stands upright leans to the right in the picture as filmed, degrees; null where it can't be
 * inferred.
 */
function readRollDeg({ extent, legs, legPx, posture }: Sight): number | null {
  const { left, right } = legs;
  if (posture !== 'standing' || left === null || right === null || extent === null) return null;
  if (extent.wanderPx > stillSpread * legPx!) return null;
  const at = extent.joints;
  if (Math.abs(at.left_ankle.y - at.right_ankle.y) > evenAnkles * legPx!) return null;
  const lines = [
    {
      deg: degrees(extent.shoulders.x - extent.ankles.x, extent.ankles.y - extent.shoulders.y),
      sd: lineSdDeg.axis,
    },
    {
      deg: degrees(at.left_hip.y - at.right_hip.y, at.left_hip.x - at.right_hip.x),
      sd: lineSdDeg.hips,
    },
    {
      deg: degrees(at.left_shoulder.y - at.right_shoulder.y, at.left_shoulder.x - at.right_shoulder.x),
      sd: lineSdDeg.shoulders,
    },
  ];
  const weight = lines.reduce((sum, { sd }) => sum + 1 / sd ** 2, 0);
  return lines.reduce((sum, { deg, sd }) => sum + deg / sd ** 2, 0) / weight;
}

function degrees(aside: number, along: number): number {
  return toDegrees(Math.atan2(aside, along));
}
