import { commonPractice, type TaskDefinition } from '../exercise';
import { at, freeX, onFloor, uprightY, workingX } from '../figure/stance';
import { kneeInward, kneeOutward } from '../library/kneeFaults';
import { towardsFifteen } from '../stage';

export const twoLeggedBend: TaskDefinition<'two-legged-bend'> = {
  kind: 'task',
  id: 'two-legged-bend',
  shape: 'dip',
  workingFoot: 'either',
  onBothFeet: true,
  freeFootReach: 0,
  viewSigns: ['thighs', 'feet'],
  treatmentOrder: 20,

  purpose: 'A check on both legs, and an easy way to learn what knee over foot feels like.',
  stages: [
    { id: 'shallow-hand', words: 'Shallow, hands on something firm.', support: 'hand', ...towardsFifteen },
    { id: 'shallow', words: 'Shallow, no hands.', support: 'none', ...towardsFifteen },
    { id: 'deeper', words: 'Deeper.', support: 'none', ...towardsFifteen },
  ],
  faults: [
    { ...kneeInward, cue: 'Knees apart, each over the middle of its foot.' },
    { ...kneeOutward, cue: 'Let the knees come in, over the second toes.' },
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'The weight shifts to one side.',
      cue: 'The same weight on both feet.',
    },
  ],
  dose: { sets: 1, repetitions: 8, restSeconds: 60, worksUpTo: null, source: commonPractice },
  felt: 'thigh-and-buttock',

  preparation: {
    needs: ['clear-floor', 'support'],
    isFilmed: true,
    start: 'standing',
    easyBends: false,
  },

  figure: {
    start: { pelvis: at(0, uprightY, 0), leanDeg: 0, own: onFloor(workingX), free: onFloor(freeX) },
    end: {
      pelvis: at(0, uprightY - 0.12, -0.13),
      leanDeg: 30,
      armDeg: 55,
      own: onFloor(workingX),
      free: onFloor(freeX),
    },
  },
};
