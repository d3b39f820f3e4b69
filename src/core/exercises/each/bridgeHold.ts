import { commonPractice, type HoldDefinition } from '../exercise';
import { at, freeX, onFloor, workingX } from '../figure/stance';

const feetZ = 0.27;

export const bridgeHold: HoldDefinition<'bridge-hold'> = {
  kind: 'hold',
  id: 'bridge-hold',
  treatmentOrder: 15,

  purpose: 'Trains the buttock to lift the pelvis with little load on the knee.',
  stages: [
    {
      id: 'both-15',
      words: 'The same weight on both feet: 15 seconds, 3 times.',
      holds: { count: 3, seconds: 15 },
    },
    {
      id: 'more-on-one-30',
      words: 'More weight on the working foot: 30 seconds, 3 times.',
      holds: { count: 3, seconds: 30 },
    },
    {
      id: 'other-heel-30',
      words: 'The other foot only touches the floor: 30 seconds, 3 times.',
      holds: { count: 3, seconds: 30 },
    },
    {
      id: 'one-leg-15',
      words: 'The other foot off the floor: 15 seconds, 3 times.',
      holds: { count: 3, seconds: 15 },
    },
  ],
  faults: [
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'The pelvis sinks or turns to the other side.',
      cue: 'Belt level, hips high.',
    },
    {
      direction: 'other',
      phases: ['turning'],
      seen: 'The lower back arches, or the back of the thigh cramps because the feet stand far away.',
      cue: 'Ribs down, feet nearer to you.',
    },
  ],
  dose: { sets: 1, holds: { count: 3, seconds: 15 }, restSeconds: 45, source: commonPractice },
  felt: 'buttock',

  preparation: { needs: ['clear-floor'], isFilmed: false, start: 'as-shown', easyBends: false },

  figure: {
    start: {
      pelvis: at(0, 0.06, 0),
      leanDeg: -90,
      armDeg: 92,
      own: onFloor(workingX, feetZ),
      free: onFloor(freeX, feetZ),
    },
    end: {
      pelvis: at(0, 0.19, 0.02),
      leanDeg: -112,
      armDeg: 84,
      own: onFloor(workingX, feetZ),
      free: onFloor(freeX, feetZ),
    },
    isLying: true,
  },
};
