import { kneeAngle } from '#core/measures/kneeAngle';
import { good, move, unknown, type Check } from './placingFinding';

/** Picture brightness, 0 black to 1 white, tight and while it was good; common practice, no source. */
const darkest = { tight: 0.2, loose: 0.17 };
const brightest = { tight: 0.9, loose: 0.93 };
/** A picture with less contrast is fogged, or shows hardly more than one colour. */
const leastContrast = { tight: 0.06, loose: 0.05 };

/**
 * Light: the picture's brightness where the caller supplies it, and whether the joints tremble so much that
 * the error band would become too wide. A lamp or window behind the person can't be distinguished from a
 * bright room.
 */
export const checkLight: Check = ({ facts: { brightness }, expected }, wasGood) => {
  const limit = wasGood ? 'loose' : 'tight';
  if (brightness !== undefined) {
    if (brightness.mean < darkest[limit])
      return move('It is too dark. Switch on a light in front of you.', 'More light');
    if (brightness.mean > brightest[limit])
      return move('It is too bright. Turn the camera away from windows and lamps.', 'Less light');
    if (brightness.contrast < leastContrast[limit])
      return move(
        'The picture looks washed out. Wipe the lens, and keep lamps from shining into it.',
        'Wipe lens',
      );
  }
  if (
    expected !== null &&
    expected.bandDeg > kneeAngle.widestBand &&
    expected.stillBandDeg <= kneeAngle.widestBand
  )
    return move(
      'Your joints can’t be seen steadily. Add light from the front and wear clothes that stand out from the wall.',
      'More light',
    );
  return brightness === undefined
    ? unknown('The brightness of the picture was not checked.', 'Light?')
    : good('There is enough light.', 'Light good');
};
