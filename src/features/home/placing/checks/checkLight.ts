import { kneeAngle } from '#core/measures/kneeAngle';
import { message } from '#words/messages/message';
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
      return move(message('placing.dark'), message('placing.more-light.short'));
    if (brightness.mean > brightest[limit])
      return move(message('placing.bright'), message('placing.bright.short'));
    if (brightness.contrast < leastContrast[limit])
      return move(message('placing.washed-out'), message('placing.washed-out.short'));
  }
  if (
    expected !== null &&
    expected.bandDeg > kneeAngle.widestBand &&
    expected.stillBandDeg <= kneeAngle.widestBand
  )
    return move(message('placing.unsteady'), message('placing.more-light.short'));
  return brightness === undefined
    ? unknown(message('placing.light-unknown'), message('placing.light-unknown.short'))
    : good(message('placing.light'), message('placing.light.short'));
};
