import { commonPractice, type HoldDefinition } from '../exercise';
import { at } from '../figure/stance';

export const sideBridgeHold: HoldDefinition<'side-bridge-hold'> = {
  kind: 'hold',
  id: 'side-bridge-hold',
  treatmentOrder: 17,

  purpose:
    'Trains the side of the trunk and the lower hip to hold the pelvis, with little bending of the knee.',
  stages: [
    {
      id: 'knees-10',
      words: 'On forearm and bent knees: 10 seconds, 3 times.',
      holds: { count: 3, seconds: 10 },
    },
    {
      id: 'knees-20',
      words: 'On forearm and bent knees: 20 seconds, 3 times.',
      holds: { count: 3, seconds: 20 },
    },
    {
      id: 'feet-10',
      words: 'Legs straight, the upper foot in front of the lower one: 10 seconds, 3 times.',
      holds: { count: 3, seconds: 10 },
    },
    {
      id: 'feet-20',
      words: 'Legs straight, the upper foot in front of the lower one: 20 seconds, 3 times.',
      holds: { count: 3, seconds: 20 },
    },
    {
      id: 'feet-stacked-30',
      words: 'Legs straight, one foot on the other: 30 seconds, 3 times.',
      holds: { count: 3, seconds: 30 },
    },
  ],
  faults: [
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'The hips sink towards the floor.',
      cue: 'Lower hip up, body in one line.',
    },
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'The trunk turns forward or back, or the hips bend.',
      cue: 'Belly to the front, hips forward.',
    },
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'The body hangs in the shoulder.',
      cue: 'Push the floor away with the forearm.',
    },
  ],
  dose: { sets: 1, holds: { count: 3, seconds: 10 }, restSeconds: 45, source: commonPractice },
  felt: 'side-of-trunk',

  preparation: { needs: ['clear-floor'], isFilmed: false, start: 'as-shown', easyBends: false },

  figure: {
    start: {
      pelvis: at(-0.03, 0.145, 0),
      leanDeg: 0,
      sideLeanDeg: 54,
      isOnForearm: true,
      own: at(0.38, 0.045, -0.02),
      free: at(0.4, 0.1, 0.08),
    },
    end: {
      pelvis: at(-0.03, 0.23, 0),
      leanDeg: 0,
      sideLeanDeg: 73,
      isOnForearm: true,
      own: at(0.4, 0.045, -0.02),
      free: at(0.42, 0.1, 0.08),
    },
    isLying: true,
    isOnSide: true,
  },
};
