import { commonPractice, type TaskDefinition } from '../exercise';
import { at, freeX, segmentLengths, uprightY, workingX, type Prop } from '../figure/stance';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from '../library/kneeFaults';
import { towardsFifteen } from '../stage';

const { ankleHeight } = segmentLengths;
const stepHeight = 0.09;
const step: Prop = { kind: 'step', at: at(workingX - 0.01, stepHeight, 0.03) };

export const lateralStepDown: TaskDefinition<'lateral-step-down'> = {
  kind: 'task',
  id: 'lateral-step-down',
  shape: 'dip',
  workingFoot: 'stiller',
  onBothFeet: false,
  freeFootReach: 0,
  viewSigns: ['feet', 'stance-foot'],
  treatmentOrder: 60,

  purpose: 'Trains the leg on the step to lower the body under control, as on stairs.',
  stages: [
    {
      id: 'step-10-hand',
      words: 'Step 10 cm, a hand on something firm.',
      stepHeightCm: 10,
      support: 'hand',
      ...towardsFifteen,
    },
    { id: 'step-10', words: 'Step 10 cm, no hand.', stepHeightCm: 10, support: 'none', ...towardsFifteen },
    {
      id: 'step-15-slow',
      words: 'Step 15 cm, 3 seconds down.',
      stepHeightCm: 15,
      support: 'none',
      tempo: { downSeconds: 3 },
      ...towardsFifteen,
    },
    { id: 'step-15', words: 'Step 15 cm.', stepHeightCm: 15, support: 'none', ...towardsFifteen },
    { id: 'step-20', words: 'Step 20 cm.', stepHeightCm: 20, support: 'none', ...towardsFifteen },
  ],
  faults: [
    kneeInward,
    kneeOutward,
    pelvisDrops,
    trunkLeans,
    {
      direction: 'other',
      phases: ['coming-back'],
      seen: 'Pushes off the floor with the lower foot.',
      cue: 'Touch like on an egg, and let the upper leg lift you.',
    },
  ],
  dose: { sets: 2, repetitions: 10, restSeconds: 60, worksUpTo: null, source: commonPractice },
  felt: 'thigh-and-buttock',

  preparation: {
    needs: ['step', 'clear-floor', 'support'],
    isFilmed: true,
    start: 'standing',
    easyBends: true,
  },

  figure: {
    start: {
      pelvis: at(-0.03, uprightY + stepHeight, 0),
      leanDeg: 0,
      prop: step,
      own: at(workingX, ankleHeight + stepHeight, 0),
      free: at(freeX, ankleHeight + stepHeight, 0.02),
    },
    end: {
      pelvis: at(-0.03, uprightY - 0.012, -0.09),
      leanDeg: 18,
      armDeg: 40,
      prop: step,
      own: at(workingX, ankleHeight + stepHeight, 0),
      free: at(freeX, ankleHeight + 0.012, 0),
    },
  },
};
