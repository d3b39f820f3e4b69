import { message } from '#words/messages/message';
import { good, move, notYet, type Check } from './placingFinding';

/**
 * Where a level camera's own height, the middle of the picture, meets the body: above the ankles, in leg lengths.
 * Between the middle of the shank and the chest; common practice, no source.
 */
const lowest = { tight: 0.25, loose: 0.15 };
const highest = { tight: 1.4, loose: 1.55 };

/**
 * Camera height, as far as it shows: a low camera tilted up looks the same as a higher, level one. Only the
 * two together can be inferred; the remedy is the same.
 */
export const checkCameraHeight: Check = ({ extent, legPx, track }, wasGood) => {
  if (extent === null || legPx === null) return notYet();
  const limit = wasGood ? 'loose' : 'tight';
  const height = (extent.ankles.y - track.heightPx / 2) / legPx;
  if (height < lowest[limit])
    return move(message('placing.camera-low'), message('placing.camera-low.short'), 'up');
  if (height > highest[limit])
    return move(message('placing.camera-high'), message('placing.camera-high.short'), 'down');
  return good(message('placing.camera-height'), message('placing.camera-height.short'));
};
