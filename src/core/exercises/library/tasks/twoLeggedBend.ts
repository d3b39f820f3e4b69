import { commonPractice, type LibraryEntry } from '../libraryEntry';
import { kneeInward, kneeOutward } from './kneeFaults';

export const twoLeggedBend: LibraryEntry = {
  purpose: 'A check on both legs, and an easy way to learn what knee over foot feels like.',
  steps: [
    'Stand on both feet, hip-wide, toes a little outward.',
    'Bend both knees, each over the middle of its foot, heels down.',
    'Straighten up.',
  ],
  stages: ['Shallow, hands on something firm.', 'Shallow, no hands.', 'Deeper.'],
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
  cautions: [],
  dose: { sets: 1, repetitions: 8, holds: null, restSeconds: 60, worksUpTo: null, source: commonPractice },
};
