import { good, move, notYet, type Check } from './placingFinding';

/**
 * Where a level camera's own height, the middle of the picture, meets the body: above the ankles, in leg lengths.
 * Between the middle of the shank and the chest; common practice, no source.
 */
const lowest = { tight: 0.25, loose: 0.15 };
const highest = { tight: 1.4, loose: 1.55 };

/**
 * Camera height, as far as it shows: a camera that stands low and looks up shows the same as one that stands higher and
 * level, so that only the two together can be told, in both cases with the same thing to do.
 */
export const checkCameraHeight: Check = ({ extent, legPx, track }, wasGood) => {
  if (extent === null || legPx === null) return notYet;
  const limit = wasGood ? 'loose' : 'tight';
  const height = (extent.ankles.y - track.heightPx / 2) / legPx;
  if (height < lowest[limit])
    return move(
      'The camera stands low or looks down. Stand it upright, about as high as your hips.',
      'Raise it',
      'up',
    );
  if (height > highest[limit])
    return move(
      'The camera stands high or looks up. Stand it upright, about as high as your hips.',
      'Set lower',
      'down',
    );
  return good('The camera height is good.', 'Height good');
};
