import { kneeAngle } from '#core/measures/kneeAngle';
import { message } from '#words/messages/message';
import { bearingDeg } from '../bearingDeg';
import type { Sight } from '../sightOf';
import { good, move, notYet, unknown, type Check, type PlacingFinding } from './placingFinding';

/**
 * Turned by more than this, about half of what measuring tolerates, degrees: the rest allows for turning
 * during the set.
 */
const widestDeg = { tight: 10, loose: 13 };
/**
 * A stance foot that points this much farther to one side than the body can't be used to infer the set's yaw,
 * degrees: twice the usual spread.
 */
const widestFootDeg = { tight: 7, loose: 9 };
/** What the set's own recording is going to read as its yaw may be this far from square, degrees. */
const widestExpectedDeg = { tight: 11, loose: 12 };
/**
 * The band that a deep bend is expected to have, as a share of the widest that is reported: a repetition may
 * go deeper.
 */
const widestBandShare = { tight: 0.92, loose: 0.94 };

/**
 * Square to the camera: the yaw as measuring reads it, from both thighs of somebody seated and both feet of somebody
 * standing, and what the set's own recording will make of it.
 */
export const checkSquare: Check = (sight, wasGood) => {
  const { extent, view, expected, obstacle, track, focalPx } = sight;
  if (extent === null || view === null || expected === null) return notYet();
  if (!extent.isFacing)
    return move(message('placing.turn-round'), message('placing.turn-round.short'), 'turn-right');
  const { yawDeg, cues } = view.yaw;
  // All that is known is that the person was asked to face the camera.
  if (cues.length < 2) return unknown(message('placing.show-feet'), message('placing.show-feet.short'));
  const limit = wasGood ? 'loose' : 'tight';
  // Somebody who stands off centre is also seen from the side by the same angle.
  const asideDeg = bearingDeg(extent.hips.x, track.widthPx, focalPx);
  const mostDeg = (deg: number) => Math.max(Math.abs(deg), Math.abs(deg + asideDeg));
  if (view.isTurned || obstacle === 'view-turned' || mostDeg(yawDeg) > widestDeg[limit])
    return turnBack(yawDeg);
  const footDeg = footBesideBodyDeg(sight);
  if (footDeg !== null && Math.abs(footDeg) > widestFootDeg[limit])
    return turnFoot(sight.setup.side, footDeg);
  const isFar = mostDeg(expected.yaw.yawDeg) > widestExpectedDeg[limit];
  if (isFar || expected.stillBandDeg > widestBandShare[limit] * kneeAngle.widestBand)
    return footDeg !== null && Math.abs(footDeg) > Math.abs(yawDeg)
      ? turnFoot(sight.setup.side, footDeg)
      : turnBack(expected.yaw.yawDeg);
  return good(message('placing.square'), message('placing.square.short'));
};

/** Positive = the body's front points to the picture's right, towards the person's own left: the left shoulder is back. */
function turnBack(yawDeg: number): PlacingFinding {
  const side = yawDeg > 0 ? 'right' : 'left';
  const isMuch = Math.abs(yawDeg) > 2 * widestDeg.tight;
  return move(
    message(isMuch ? 'placing.turn-back' : 'placing.turn-back-a-little', { side }),
    message('placing.turn-back.short', { side }),
    `turn-${side}`,
  );
}

/** How much farther to the picture's right the stance foot points than the body; null where the set does not use it. */
function footBesideBodyDeg({ view, expected, setup }: Sight): number | null {
  if (setup.bends !== undefined) return null;
  const foot = expected?.yaw.cues.find(({ name }) => name === 'stance-foot');
  return foot === undefined || view === null ? null : foot.yawDeg - view.yaw.yawDeg;
}

function turnFoot(side: 'left' | 'right', footDeg: number): PlacingFinding {
  const towards = footDeg > 0 ? 'right' : 'left';
  const way = towards === side ? 'outward' : 'inward';
  return move(
    message('placing.turn-toes', { side, way }),
    message('placing.turn-toes.short', { way }),
    `turn-${towards}`,
  );
}
