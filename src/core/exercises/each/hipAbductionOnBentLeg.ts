import { commonPractice, type TaskDefinition } from '../exercise';
import { at, freeX, onFloor, uprightY, workingX } from '../figure/stance';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from '../library/kneeFaults';
import { towardsFifteen } from '../stage';

export const hipAbductionOnBentLeg: TaskDefinition<'hip-abduction-on-bent-leg'> = {
  kind: 'task',
  id: 'hip-abduction-on-bent-leg',
  shape: 'reach',
  workingFoot: 'stiller',
  onBothFeet: false,
  freeFootReach: 0.7,
  viewSigns: ['stance-foot'],
  treatmentOrder: 30,

  purpose: 'Trains the hip of the bent stance leg to hold the pelvis level while the other leg moves out.',
  stages: [
    {
      id: 'small-hand',
      words: 'Small movement, a hand on something firm.',
      support: 'hand',
      ...towardsFifteen,
    },
    {
      id: 'small-fingertip',
      words: 'Small movement, a fingertip on something firm.',
      support: 'fingertip',
      ...towardsFifteen,
    },
    {
      id: 'bend-30',
      words: 'Stance knee bent to 30°, a fingertip on something firm.',
      bendDeg: 30,
      support: 'fingertip',
      ...towardsFifteen,
    },
    {
      id: 'tube-light',
      words: 'The same with a light tube at the ankle, anchored low and beside the stance leg.',
      bendDeg: 30,
      support: 'fingertip',
      load: { kind: 'tube', level: 'light', where: 'ankle' },
      ...towardsFifteen,
    },
    {
      id: 'tube-medium',
      words: 'The same with a medium tube at the ankle.',
      bendDeg: 30,
      support: 'fingertip',
      load: { kind: 'tube', level: 'medium', where: 'ankle' },
      ...towardsFifteen,
    },
  ],
  faults: [
    { ...kneeInward, phases: ['turning', 'going'], cue: 'Standing knee over the middle of its foot.' },
    { ...kneeOutward, phases: ['turning'] },
    pelvisDrops,
    trunkLeans,
    {
      direction: 'other',
      phases: ['going'],
      seen: 'The stance knee straightens.',
      cue: 'Keep the standing knee soft.',
    },
  ],
  dose: { sets: 2, repetitions: 12, restSeconds: 60, worksUpTo: null, source: commonPractice },
  felt: 'thigh-and-buttock',

  preparation: {
    needs: ['clear-floor', 'support'],
    isFilmed: true,
    start: 'standing',
    easyBends: true,
  },

  figure: {
    start: {
      pelvis: at(-0.03, uprightY - 0.025, -0.04),
      leanDeg: 8,
      own: onFloor(workingX),
      free: at(freeX, 0.06, -0.02),
    },
    end: {
      pelvis: at(-0.03, uprightY - 0.025, -0.04),
      leanDeg: 8,
      own: onFloor(workingX),
      free: at(0.35, 0.14, -0.11),
    },
  },
};
