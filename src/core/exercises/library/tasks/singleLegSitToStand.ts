import { commonPractice, type LibraryEntry } from '../libraryEntry';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from './kneeFaults';

export const singleLegSitToStand: LibraryEntry = {
  purpose: 'Shows and trains whether one leg alone can lift and lower the body with the knee over the foot.',
  steps: [
    'Lean forward until the weight is over the {side} foot, and stand up on that leg.',
    'Stand tall for a moment; the {other} foot may touch the floor.',
    'Sit back slowly on the {side} leg.',
  ],
  stages: [
    'Higher seat, one hand on something firm.',
    'Usual seat, no hand.',
    'Lower seat.',
    'More repetitions.',
  ],
  faults: [
    { ...kneeInward, phases: ['going', 'coming-back'] },
    { ...kneeOutward, phases: ['going'] },
    pelvisDrops,
    trunkLeans,
    {
      direction: 'other',
      phases: ['going'],
      seen: 'Swings the arms or the free leg to get off the seat.',
      cue: 'Lean first, then push, without a swing.',
    },
  ],
  cautions: [
    'The chair must stand against a wall: it is pushed backwards each time you sit down.',
    'Put the other foot down whenever you feel unsteady.',
  ],
  dose: { sets: 2, repetitions: 8, holds: null, restSeconds: 90, worksUpTo: null, source: commonPractice },
};
