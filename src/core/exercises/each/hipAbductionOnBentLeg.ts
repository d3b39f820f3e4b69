import { commonPractice, type TaskDefinition } from '../exercise';
import { at, freeX, onFloor, uprightY, workingX } from '../figure/stance';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from '../library/kneeFaults';
import { cameraInFront, faceCamera } from '../preparation';
import { towardsFifteen } from '../stage';

export const hipAbductionOnBentLeg: TaskDefinition<'hip-abduction-on-bent-leg'> = {
  kind: 'task',
  id: 'hip-abduction-on-bent-leg',
  name: 'Hip abduction on a bent stance leg',
  shape: 'reach',
  workingFoot: 'stiller',
  sideHint: 'The working leg is the bent one that is stood on; the other moves out to the side.',
  onBothFeet: false,
  freeFootReach: 0.7,
  viewSigns: ['stance-foot'],
  treatmentOrder: 30,

  purpose: 'Trains the hip of the bent stance leg to hold the pelvis level while the other leg moves out.',
  steps: [
    'Keep the {side} knee a little bent all along.',
    'Move the {other} leg out to the side, toes forward.',
    'Bring it back without a swing.',
  ],
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
      words: 'The same with a light tube at the ankle.',
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
  cautions: ['Put the other foot down whenever you feel unsteady.'],
  dose: { sets: 2, repetitions: 12, restSeconds: 60, worksUpTo: null, source: commonPractice },

  preparation: {
    needs: ['clear-floor', 'support'],
    steps: [
      'Stand with what you hold on to on your {side} side, within reach.',
      'Stand on your {side} leg with the knee a little bent; the {other} leg will move out to the side.',
      faceCamera,
    ],
    camera: cameraInFront,
    start: 'standing',
    startLine: 'Stand on your {side} leg, knee a little bent.',
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
      free: at(0.36, 0.14, -0.03),
    },
  },
};
