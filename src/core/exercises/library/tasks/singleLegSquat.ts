import { commonPractice, type LibraryEntry } from '../libraryEntry';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from './kneeFaults';

export const singleLegSquat: LibraryEntry = {
  purpose: 'Trains one leg to bend and straighten under the body with hip, knee and foot in line.',
  steps: [
    'Stand tall.',
    'Sit back and bend the {side} knee, only as far as it stays over the foot and without pain.',
    'Push through the heel and straighten up.',
  ],
  stages: [
    'Shallow, one hand on something firm.',
    'Shallow, no hand.',
    'Deeper.',
    'Slower, with a stay at the bottom.',
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
  cautions: ['Put the other foot down whenever you feel unsteady.'],
  dose: { sets: 2, repetitions: 10, holds: null, restSeconds: 60, worksUpTo: null, source: commonPractice },
};
