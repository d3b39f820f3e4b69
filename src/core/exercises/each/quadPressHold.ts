import { commonPractice, type HoldDefinition } from '../exercise';
import { at, freeX, onFloor, workingX, type Prop } from '../figure/stance';

const ball: Prop = { kind: 'ball', at: at(workingX, 0.055, 0.21) };

export const quadPressHold: HoldDefinition<'quad-press-hold'> = {
  kind: 'hold',
  id: 'quad-press-hold',
  name: 'Quadriceps press, held',
  moments: { start: 'before', end: 'pressing' },
  treatmentOrder: 10,

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
    holds: { count: 3, seconds: 30 },
    restSeconds: 60,
    source: commonPractice,
  },

  preparation: {
    needs: ['ball', 'clear-floor'],
    steps: ['Get into the position that you were shown, with the ball behind your {side} thigh.'],
    camera: null,
    start: 'as-shown',
    startLine: 'Get into position, ball behind your {side} thigh.',
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
