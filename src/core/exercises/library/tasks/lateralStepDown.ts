import { commonPractice, type LibraryEntry } from '../libraryEntry';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from './kneeFaults';

export const lateralStepDown: LibraryEntry = {
  purpose: 'Trains the leg on the step to lower the body under control, as on stairs.',
  steps: [
    'Bend the {side} knee until the {other} heel nearly touches the floor.',
    'Straighten the {side} knee; do not push off with the {other} foot.',
  ],
  stages: ['Low step, one hand on something firm.', 'Low step, no hand.', 'Higher step.', 'Slower.'],
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
  cautions: ['The step must not tip or slide. Hold on to something until you are sure of it.'],
  dose: { sets: 2, repetitions: 10, holds: null, restSeconds: 60, worksUpTo: null, source: commonPractice },
};
