import { commonPractice, type HoldDefinition } from '../exercise';
import { at, freeX, onFloor, workingX, type Prop } from '../figure/stance';

const backZ = -0.03;
const feetZ = 0.2;
const wall: Prop = { kind: 'wall', at: at(0, 0, backZ - 0.07) };

export const wallSitHold: HoldDefinition<'wall-sit-hold'> = {
  kind: 'hold',
  id: 'wall-sit-hold',
  treatmentOrder: 45,

  purpose: 'Loads the quadriceps at one knee angle without movement, most of the weight on the working leg.',
  stages: [
    {
      id: 'bend-45-15',
      words: 'Knees bent to 45°, the same weight on both legs: 15 seconds, 3 times.',
      bendDeg: 45,
      holds: { count: 3, seconds: 15 },
    },
    {
      id: 'bend-45-30',
      words: 'Knees bent to 45°, more weight on the working leg: 30 seconds, 3 times.',
      bendDeg: 45,
      holds: { count: 3, seconds: 30 },
    },
    {
      id: 'bend-60-30',
      words: 'Knees bent to 60°, more weight on the working leg: 30 seconds, 3 times.',
      bendDeg: 60,
      holds: { count: 3, seconds: 30 },
    },
    {
      id: 'bend-60-45',
      words: 'Knees bent to 60°, more weight on the working leg: 45 seconds, 4 times.',
      bendDeg: 60,
      holds: { count: 4, seconds: 45 },
    },
  ],
  faults: [
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'A knee falls inward, or the weight goes over to the other leg.',
      cue: 'Knees over the feet, weight on the working leg.',
    },
    {
      direction: 'other',
      phases: ['setting-up'],
      seen: 'The feet stand so near to the wall that the knees go far beyond the toes.',
      cue: 'Feet a small step farther out.',
    },
  ],
  dose: { sets: 1, holds: { count: 3, seconds: 15 }, restSeconds: 60, source: commonPractice },
  felt: 'thigh',

  preparation: { needs: ['wall', 'clear-floor'], isFilmed: false, start: 'as-shown', easyBends: false },

  figure: {
    start: {
      pelvis: at(0, 0.465, backZ),
      leanDeg: 0,
      own: onFloor(workingX, feetZ),
      free: onFloor(freeX, feetZ),
      prop: wall,
    },
    end: {
      pelvis: at(0, 0.395, backZ),
      leanDeg: 0,
      own: onFloor(workingX, feetZ),
      free: onFloor(freeX, feetZ),
      prop: wall,
    },
  },
};
