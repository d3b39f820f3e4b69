import { commonPractice, type LibraryEntry } from '../libraryEntry';
import { kneeInward, kneeOutward, trunkLeans } from './kneeFaults';

export const slidingLegSquat: LibraryEntry = {
  purpose:
    'Trains the planted leg to bend under the body while the other one slides out and takes little weight.',
  steps: [
    'Put the weight on the {side} leg.',
    'Bend the {side} knee and let the {other} foot slide away to the side.',
    'Stop before the {side} knee leaves the middle of the foot.',
    'Push through the {side} heel and pull the {other} foot back.',
  ],
  stages: [
    'Short slide, one hand on something firm.',
    'Longer slide.',
    'Deeper.',
    'Slower, with a stay at the end.',
  ],
  faults: [
    kneeInward,
    kneeOutward,
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'The weight goes over to the sliding leg.',
      cue: 'Stay over the planted foot.',
    },
    trunkLeans,
  ],
  cautions: [
    'The planted foot must not slide: bare floor or a firm sole under it, the cloth under the other foot only.',
  ],
  dose: { sets: 2, repetitions: 10, holds: null, restSeconds: 60, worksUpTo: null, source: commonPractice },
};
