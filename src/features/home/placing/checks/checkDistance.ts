import { legLengthCm } from '#core/protocol/bodyHeight';
import { message } from '#words/messages/message';
import { good, move, notYet, type Check } from './placingFinding';

/** Leg length over picture height: nearer there is no room to move, farther the joints are seen too coarsely. */
const nearest = { tight: 0.42, loose: 0.44 };
const farthest = { tight: 0.2, loose: 0.185 };
/** What is aimed at. */
const aim = 0.31;
/** Where the body height is not known, cm: metres are rounded to halves, and said with 'about'. */
const usualHeightCm = 170;

/** Distance, inferred from the apparent leg length. */
export const checkDistance: Check = ({ legPx, extent, track, focalPx, setup }, wasGood) => {
  if (legPx === null || extent === null) return notYet();
  const limit = wasGood ? 'loose' : 'tight';
  const share = legPx / track.heightPx;
  const legM = legLengthCm(setup.bodyHeightCm ?? usualHeightCm) / 100;
  const atShareM = (of: number) => (focalPx * legM) / (of * track.heightPx);
  const steps = halfMetres(Math.abs(atShareM(share) - atShareM(aim)));
  if (share > nearest[limit])
    return move(message('placing.too-near', steps), message('placing.too-near.short'), 'farther');
  if (share < farthest[limit])
    return move(message('placing.too-far', steps), message('placing.too-far.short'), 'closer');
  return good(message('placing.distance'), message('placing.distance.short'));
};

/** At least half a metre, in halves; more than three metres are said as a number. */
function halfMetres(metres: number): { halves: number; metres: number } {
  const halves = Math.max(1, Math.round(metres * 2));
  return { halves, metres: halves / 2 };
}
