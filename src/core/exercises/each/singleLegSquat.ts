import { commonPractice, type TaskDefinition } from '../exercise';
import { at, freeX, onFloor, uprightY, workingX } from '../figure/stance';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from '../library/kneeFaults';
import { towardsFifteen } from '../stage';

export const singleLegSquat: TaskDefinition<'single-leg-squat'> = {
  kind: 'task',
  id: 'single-leg-squat',
  shape: 'dip',
  workingFoot: 'stiller',
  onBothFeet: false,
  freeFootReach: 0,
  viewSigns: ['free-shank', 'stance-foot'],
  treatmentOrder: 70,

  purpose: 'Trains one leg to bend and straighten under the body with hip, knee and foot in line.',
  stages: [
    {
      id: 'bend-45-hand',
      words: 'Knee bent to 45°, a hand on something firm.',
      bendDeg: 45,
      support: 'hand',
      ...towardsFifteen,
    },
    { id: 'bend-45', words: 'Knee bent to 45°, no hand.', bendDeg: 45, support: 'none', ...towardsFifteen },
    { id: 'bend-60', words: 'Knee bent to 60°.', bendDeg: 60, support: 'none', ...towardsFifteen },
    {
      id: 'bend-60-slow',
      words: 'Knee bent to 60°, 3 seconds down and a second at the bottom.',
      bendDeg: 60,
      support: 'none',
      tempo: { downSeconds: 3, pauseSeconds: 1 },
      ...towardsFifteen,
    },
    { id: 'bend-75', words: 'Knee bent to 75°.', bendDeg: 75, support: 'none', ...towardsFifteen },
  ],
  faults: [
    kneeInward,
    kneeOutward,
    pelvisDrops,
    trunkLeans,
    {
      direction: 'other',
      phases: ['going'],
      seen: 'The knee goes forward and the hip stays up.',
      cue: 'Sit back, hip over knee.',
    },
  ],
  dose: { sets: 2, repetitions: 10, restSeconds: 60, worksUpTo: null, source: commonPractice },
  felt: 'thigh-and-buttock',

  preparation: {
    needs: ['clear-floor', 'support'],
    isFilmed: true,
    start: 'standing',
    easyBends: true,
  },

  figure: {
    start: {
      pelvis: at(-0.03, uprightY, 0),
      leanDeg: 0,
      own: onFloor(workingX),
      free: at(freeX - 0.04, 0.16, -0.2),
    },
    end: {
      pelvis: at(-0.03, uprightY - 0.1, -0.12),
      leanDeg: 28,
      armDeg: 55,
      own: onFloor(workingX),
      free: at(freeX - 0.04, 0.14, -0.26),
    },
  },
};
