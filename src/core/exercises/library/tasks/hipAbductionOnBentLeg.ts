import { commonPractice, type LibraryEntry } from '../libraryEntry';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from './kneeFaults';

export const hipAbductionOnBentLeg: LibraryEntry = {
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
  dose: { sets: 2, repetitions: 12, holds: null, restSeconds: 60, worksUpTo: null, source: commonPractice },
};
