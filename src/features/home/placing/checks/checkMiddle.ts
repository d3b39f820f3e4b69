import { message } from '#words/messages/message';
import { bearingDeg } from '../bearingDeg';
import { good, move, notYet, type Check } from './placingFinding';

/**
 * How far off the camera's axis somebody may stand, degrees: a foot's direction is misread by the same angle
 * (docs/view.md).
 */
const farthestDeg = { tight: 4.5, loose: 6 };

/** In the middle of the picture. */
export const checkMiddle: Check = ({ extent, track, focalPx }, wasGood) => {
  if (extent === null) return notYet();
  const asideDeg = bearingDeg(extent.hips.x, track.widthPx, focalPx);
  if (Math.abs(asideDeg) <= farthestDeg[wasGood ? 'loose' : 'tight'])
    return good(message('placing.middle'), message('placing.middle.short'));
  // Right in the picture as filmed is the person's own left.
  const side = asideDeg > 0 ? 'right' : 'left';
  return move(message('placing.step-aside', { side }), message('placing.step-aside.short', { side }), side);
};
