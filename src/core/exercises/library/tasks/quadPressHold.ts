import { commonPractice, type LibraryEntry } from '../libraryEntry';

export const quadPressHold: LibraryEntry = {
  purpose: 'Wakes the quadriceps without moving the knee, before the other exercises.',
  steps: [
    'Press the {side} thigh back into the ball and tighten the muscle above the knee.',
    'Breathe on; hold until the time is over.',
    'Let go slowly.',
  ],
  stages: ['Press lightly, for a shorter time.', '30 seconds.', 'Press harder, still without pain.'],
  faults: [
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'Holds the breath, or presses with the hip instead of the thigh.',
      cue: 'Breathe, and tighten above the kneecap.',
    },
  ],
  cautions: ['The knee must not hurt while you press: press less, or stop.'],
  dose: {
    sets: 1,
    repetitions: null,
    holds: { count: 3, seconds: 30 },
    restSeconds: 60,
    worksUpTo: null,
    source: commonPractice,
  },
};
