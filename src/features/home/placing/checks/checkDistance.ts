import { legLengthCm } from '#core/protocol/bodyHeight';
import { good, move, notYet, type Check } from './placingFinding';

/** Leg length over picture height: nearer there is no room to move, farther the joints are seen too coarsely. */
const nearest = { tight: 0.42, loose: 0.44 };
const farthest = { tight: 0.2, loose: 0.185 };
/** What is aimed at. */
const aim = 0.31;
/** Where the body height is not known, cm: metres are rounded to halves, and said with 'about'. */
const usualHeightCm = 170;

/** Distance, told from how long the legs look. */
export const checkDistance: Check = ({ legPx, extent, track, focalPx, setup }, wasGood) => {
  if (legPx === null || extent === null) return notYet;
  const limit = wasGood ? 'loose' : 'tight';
  const share = legPx / track.heightPx;
  const legM = legLengthCm(setup.bodyHeightCm ?? usualHeightCm) / 100;
  const atShareM = (of: number) => (focalPx * legM) / (of * track.heightPx);
  const stepWords = halfMetres(Math.abs(atShareM(share) - atShareM(aim)));
  if (share > nearest[limit]) return move(`Step back by about ${stepWords}.`, 'Step back', 'farther');
  if (share < farthest[limit]) return move(`Come closer by about ${stepWords}.`, 'Come near', 'closer');
  return good('The distance is good.', 'Distance good');
};

const inWords = ['no', 'one', 'two', 'three', 'four', 'five'];

function halfMetres(metres: number): string {
  const halves = Math.max(1, Math.round(metres * 2));
  if (halves === 1) return 'half a metre';
  if (halves === 2) return 'one metre';
  const whole = inWords[Math.floor(halves / 2)] ?? `${Math.floor(halves / 2)}`;
  return halves % 2 === 0 ? `${whole} metres` : `${whole} and a half metres`;
}
