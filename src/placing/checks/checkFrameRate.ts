import { leastFrameRateHz } from '../../measurement/collectNotes';
import { good, move, notYet, type Check } from './finding';

/** Pictures a second, by the limit at which measuring warns. */
export const checkFrameRate: Check = ({ track, facts, points, obstacle }) => {
  if (track.timesMs.length < 2) return notYet;
  const rateHz = Math.round(facts.cameraRateHz ?? points.frameRateHz);
  if (rateHz < leastFrameRateHz)
    return move(
      `The camera gives only ${rateHz} pictures a second. Add light, and close other programs.`,
      'Camera too slow',
    );
  if (obstacle === 'frames-missing')
    return move('Pictures are being lost. Close other programs, and add light.', 'Camera too slow');
  return good('The camera is fast enough.', 'Speed good');
};
