import { commonPractice, type LibraryEntry } from '../libraryEntry';
import { kneeInward, kneeOutward, trunkLeans } from './kneeFaults';

export const splitStanceSitToStand: LibraryEntry = {
  purpose:
    'Trains the front leg to lift and lower the body with the knee over the foot, with help from the back leg.',
  steps: [
    'Lean the trunk forward until the weight is over the {side} foot.',
    'Push through the {side} heel and stand up; the {other} leg helps only as much as needed.',
    'Stand tall for a moment.',
    'Sit back slowly, hip over knee, until you touch the seat.',
  ],
  stages: [
    'Higher seat, both legs share the load.',
    'The back foot stands on its toes.',
    'Lower seat, the back foot only touches.',
    'The back foot is off the floor: single-leg sit-to-stand.',
  ],
  faults: [
    {
      ...kneeInward,
      phases: ['going', 'coming-back'],
      cue: 'Knee over the middle of the foot, all the way up.',
    },
    { ...kneeOutward, phases: ['going'] },
    {
      direction: 'other',
      phases: ['going'],
      seen: 'The back leg does the work: the pelvis stays over the back foot.',
      cue: 'Push through the front heel.',
    },
    {
      direction: 'other',
      phases: ['coming-back'],
      seen: 'Drops onto the seat.',
      cue: 'Sit down as slowly as you stood up.',
    },
    trunkLeans,
  ],
  cautions: ['The chair must stand against a wall: it is pushed backwards each time you sit down.'],
  dose: {
    sets: 2,
    repetitions: 10,
    holds: null,
    restSeconds: 60,
    worksUpTo: { min: 20, max: 25 },
    source: commonPractice,
  },
};
