import { otherSide } from '#core/protocol/side';
import { message } from '#words/messages/message';
import type { Sight } from '../sightOf';
import { good, move, notYet, unknown, type Check } from './placingFinding';

/** Room that is left round the body, share of the picture's height. */
const margin = { tight: 0.02, loose: 0.005 };
/** How far the crown lies above the eyes, share of leg length; Drillis & Contini, from memory: (1 - .936) / .491. */
const crownAboveEyes = 0.13;
/** How far the crown of a standing person lies above the ankles: (1 - .039) / .491, the same source. */
const crownAboveAnkles = 1.96;

/** Whole body in the picture from head to shoes, and where it will be during the task: standing up, leg to the side. */
export const checkWholeBody: Check = (sight, wasGood) => {
  const { extent, legPx, obstacle, task, posture } = sight;
  if (extent === null || legPx === null || obstacle === 'no-person') return notYet();
  if (task.shape !== 'rise' && posture === 'seated')
    return unknown(message('placing.stand-up'), message('placing.stand-up.short'));
  const { top, bottom, left, right } = roomRound(sight, wasGood);
  if (top + bottom < 0 || left + right < 0)
    return move(message('placing.whole-back'), message('placing.too-near.short'), 'farther');
  if (bottom < 0) return move(message('placing.shoes-cut'), message('placing.shoes-cut.short'), 'down');
  if (top < 0) {
    const sentence = message(posture === 'seated' ? 'placing.head-will-be-cut' : 'placing.head-cut');
    return move(sentence, message('placing.head-cut.short'), 'up');
  }
  // Picture left is the side of the person's own right.
  if (left < 0 || right < 0) {
    const side = left < 0 ? 'left' : 'right';
    return move(message('placing.no-room', { side }), message('placing.step-aside.short', { side }), side);
  }
  if (obstacle === 'out-of-picture')
    return move(message('placing.stay-in'), message('placing.stay-in.short'));
  return good(message('placing.whole-body'), message('placing.whole-body.short'));
};

/** Room between the body and the picture's edges, px; below 0 where it is cut off. */
function roomRound({ extent, legPx, task, setup, track, posture }: Sight, wasGood: boolean) {
  const { eyesPx, ankles, bottomPx, leftPx, rightPx, hips } = extent!;
  const marginPx = margin[wasGood ? 'loose' : 'tight'] * track.heightPx;
  const seenCrownPx = eyesPx - crownAboveEyes * legPx!;
  const risesPx =
    task.shape === 'rise' && posture !== 'standing' ? ankles.y - crownAboveAnkles * legPx! : Infinity;
  const reachPx = task.freeFootReach * legPx!;
  const freeIsRight = otherSide(setup.side) === 'left';
  return {
    top: Math.min(seenCrownPx, risesPx) - marginPx,
    bottom: track.heightPx - marginPx - bottomPx,
    left: Math.min(leftPx, freeIsRight ? Infinity : hips.x - reachPx) - marginPx,
    right: track.widthPx - marginPx - Math.max(rightPx, freeIsRight ? hips.x + reachPx : -Infinity),
  };
}
