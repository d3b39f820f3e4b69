import { commonPractice, type HoldDefinition } from '../exercise';
import { at, freeX, onFloor, workingX, type Prop } from '../figure/stance';

const ball: Prop = { kind: 'ball', at: at(workingX, 0.055, 0.21) };

export const quadPressHold: HoldDefinition<'quad-press-hold'> = {
  kind: 'hold',
  id: 'quad-press-hold',
  treatmentOrder: 10,

  purpose: 'Wakes the quadriceps without moving the knee, before the other exercises.',
  stages: [
    { id: 'light-15', words: 'Press lightly for 15 seconds, 3 times.', holds: { count: 3, seconds: 15 } },
    { id: 'press-30', words: 'Press for 30 seconds, 3 times.', holds: { count: 3, seconds: 30 } },
    {
      id: 'hard-30',
      words: 'Press as hard as you can without pain for 30 seconds, 4 times.',
      holds: { count: 4, seconds: 30 },
    },
    {
      id: 'standing-30',
      words: 'Standing, the ball between the back of the thigh and a wall: 30 seconds, 4 times.',
      holds: { count: 4, seconds: 30 },
    },
  ],
  faults: [
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'Holds the breath, or presses with the hip instead of the thigh.',
      cue: 'Breathe, and tighten above the kneecap.',
    },
    {
      direction: 'other',
      phases: ['setting-up'],
      seen: 'The foot stands so near that the knee cannot straighten against the ball, or so far that it takes no effort.',
      cue: 'Move the foot until you can press well.',
    },
  ],
  dose: {
    sets: 1,
    holds: { count: 3, seconds: 30 },
    restSeconds: 60,
    source: commonPractice,
  },
  felt: 'thigh',

  preparation: {
    needs: ['ball', 'clear-floor'],
    isFilmed: false,
    start: 'as-shown',
    easyBends: false,
  },

  figure: {
    start: {
      pelvis: at(0, 0.06, 0),
      leanDeg: -12,
      armDeg: -8,
      own: onFloor(workingX, 0.46),
      free: onFloor(freeX, 0.46),
      prop: ball,
    },
    end: {
      pelvis: at(0, 0.06, 0),
      leanDeg: -12,
      armDeg: -8,
      own: onFloor(workingX, 0.484),
      presses: true,
      free: onFloor(freeX, 0.46),
      prop: ball,
    },
    isLying: true,
  },
};
