import { commonPractice, type TaskDefinition } from '../exercise';
import { at, freeX, onFloor, uprightY, workingX } from '../figure/stance';
import { kneeInward, kneeOutward, trunkLeans } from '../library/kneeFaults';
import { towardsFifteen } from '../stage';

export const slidingLegSquat: TaskDefinition<'sliding-leg-squat'> = {
  kind: 'task',
  id: 'sliding-leg-squat',
  shape: 'dip',
  workingFoot: 'stiller',
  onBothFeet: true,
  freeFootReach: 0.7,
  viewSigns: ['feet', 'stance-foot'],
  treatmentOrder: 40,

  purpose:
    'Trains the planted leg to bend under the body while the other one slides out and takes little weight.',
  stages: [
    { id: 'short-hand', words: 'Short slide, a hand on something firm.', support: 'hand', ...towardsFifteen },
    { id: 'short', words: 'Short slide, no hand.', support: 'none', ...towardsFifteen },
    { id: 'long', words: 'Long slide.', support: 'none', ...towardsFifteen },
    {
      id: 'long-loop-light',
      words: 'Long slide, light loop above the knees.',
      support: 'none',
      load: { kind: 'loop', level: 'light', where: 'above-knees' },
      ...towardsFifteen,
    },
    {
      id: 'long-loop-medium',
      words: 'Long slide, medium loop above the knees.',
      support: 'none',
      load: { kind: 'loop', level: 'medium', where: 'above-knees' },
      ...towardsFifteen,
    },
  ],
  faults: [
    kneeInward,
    kneeOutward,
    {
      direction: 'other',
      phases: ['coming-back'],
      seen: 'Pulls the sliding foot back, so that the inside of that thigh works and not the hip of the planted leg.',
      cue: 'Push up; let the sliding foot only follow.',
    },
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'The weight goes over to the sliding leg.',
      cue: 'Stay over the planted foot.',
    },
    trunkLeans,
  ],
  dose: { sets: 2, repetitions: 10, restSeconds: 60, worksUpTo: null, source: commonPractice },
  felt: 'thigh-and-buttock',

  preparation: {
    needs: ['clear-floor', 'support', 'slide'],
    isFilmed: true,
    start: 'standing',
    easyBends: true,
  },

  figure: {
    start: { pelvis: at(-0.02, uprightY, 0), leanDeg: 0, own: onFloor(workingX), free: onFloor(freeX) },
    end: {
      pelvis: at(-0.04, uprightY - 0.12, -0.12),
      leanDeg: 28,
      armDeg: 55,
      own: onFloor(workingX),
      free: onFloor(freeX + 0.24),
    },
  },
};
