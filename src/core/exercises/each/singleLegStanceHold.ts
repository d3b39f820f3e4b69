import { commonPractice, type HoldDefinition } from '../exercise';
import { at, freeX, onFloor, uprightY, workingX } from '../figure/stance';
import { pelvisDrops, trunkLeans } from '../library/kneeFaults';

export const singleLegStanceHold: HoldDefinition<'single-leg-stance-hold'> = {
  kind: 'hold',
  id: 'single-leg-stance-hold',
  treatmentOrder: 25,

  purpose: 'Trains one leg to carry the body with the pelvis level, before that leg bends.',
  stages: [
    {
      id: 'hand-20',
      words: 'A hand on something firm: 20 seconds, 3 times.',
      support: 'hand',
      holds: { count: 3, seconds: 20 },
    },
    {
      id: 'fingertip-30',
      words: 'A fingertip on something firm: 30 seconds, 3 times.',
      support: 'fingertip',
      holds: { count: 3, seconds: 30 },
    },
    {
      id: 'free-30',
      words: 'No hand: 30 seconds, 3 times.',
      support: 'none',
      holds: { count: 3, seconds: 30 },
    },
    {
      id: 'free-45',
      words: 'No hand: 45 seconds, 3 times.',
      support: 'none',
      holds: { count: 3, seconds: 45 },
    },
  ],
  faults: [
    pelvisDrops,
    trunkLeans,
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'The knee is locked straight, or the weight hangs in the support.',
      cue: 'Knee soft, weight over the middle of the foot.',
    },
  ],
  dose: { sets: 1, holds: { count: 3, seconds: 20 }, restSeconds: 30, source: commonPractice },
  felt: 'thigh-and-buttock',

  preparation: { needs: ['clear-floor', 'support'], isFilmed: false, start: 'as-shown', easyBends: false },

  figure: {
    start: { pelvis: at(0, uprightY, 0), leanDeg: 0, own: onFloor(workingX), free: onFloor(freeX) },
    end: {
      pelvis: at(-0.04, uprightY - 0.004, 0),
      leanDeg: 0,
      own: onFloor(workingX),
      free: at(freeX - 0.04, 0.15, -0.18),
    },
  },
};
