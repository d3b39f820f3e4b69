import { commonPractice, type TaskDefinition } from '../exercise';
import { at, freeX, onFloor, uprightY, workingX } from '../figure/stance';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from '../library/kneeFaults';
import { cameraInFront, faceCamera } from '../preparation';

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
    'Small movement, one hand on something firm.',
    'No hand.',
    'Stance knee bent more.',
    'Elastic band.',
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
