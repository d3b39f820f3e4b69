import { bearingDeg } from '../bearingDeg';
import { good, move, notYet, type Check } from './placingFinding';

/**
 * How far beside the camera's own direction somebody may stand, degrees: from there on a foot's direction is read off
 * by as much (docs/view.md).
 */
const farthestDeg = { tight: 4.5, loose: 6 };

/** In the middle of the picture. */
export const checkMiddle: Check = ({ extent, track, focalPx }, wasGood) => {
  if (extent === null) return notYet;
  const asideDeg = bearingDeg(extent.hips.x, track.widthPx, focalPx);
  if (Math.abs(asideDeg) <= farthestDeg[wasGood ? 'loose' : 'tight'])
    return good('You stand in the middle.', 'In the middle');
  // Right in the picture as filmed is the person's own left.
  return asideDeg > 0
    ? move('Take a step to your right.', 'Step right', 'right')
    : move('Take a step to your left.', 'Step left', 'left');
};
