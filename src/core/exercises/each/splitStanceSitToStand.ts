import { commonPractice, type TaskDefinition } from '../exercise';
import { at, chair, freeX, onFloor, seatedY, seatZ, uprightY, workingX } from '../figure/stance';
import { kneeInward, kneeOutward, trunkLeans } from '../library/kneeFaults';
import { towardsTwenty } from '../stage';

export const splitStanceSitToStand: TaskDefinition<'split-stance-sit-to-stand'> = {
  kind: 'task',
  id: 'split-stance-sit-to-stand',
  shape: 'rise',
  workingFoot: 'nearer',
  onBothFeet: true,
  freeFootReach: 0,
  viewSigns: ['thighs', 'feet'],
  treatmentOrder: 50,

  purpose:
    'Trains the front leg to lift and lower the body with the knee over the foot, with help from the back leg.',
  stages: [
    {
      id: 'seat-50',
      words: 'Seat 50 cm, back foot flat, something firm within reach.',
      seatHeightCm: 50,
      ...towardsTwenty,
    },
    { id: 'seat-46', words: 'Seat 46 cm, back foot flat.', seatHeightCm: 46, ...towardsTwenty },
    {
      id: 'back-foot-toes',
      words: 'Seat 46 cm, the back foot on its toes.',
      seatHeightCm: 46,
      ...towardsTwenty,
    },
    {
      id: 'lower-on-one',
      words:
        'Seat 46 cm: up with both legs, down with the front leg alone, the other foot just off the floor.',
      seatHeightCm: 46,
      ...towardsTwenty,
    },
  ],
  leadsTo: 'single-leg-sit-to-stand',
  faults: [
    {
      ...kneeInward,
      phases: ['going', 'coming-back'],
      cue: 'Knee over the middle of the foot, all the way up.',
    },
    { ...kneeOutward, phases: ['going'] },
    {
      direction: 'other',
      phases: ['going'],
      seen: 'The back leg does the work: the pelvis stays over the back foot.',
      cue: 'Push through the front heel.',
    },
    {
      direction: 'other',
      phases: ['coming-back'],
      seen: 'Drops onto the seat.',
      cue: 'Sit down as slowly as you stood up.',
    },
    trunkLeans,
    {
      direction: 'other',
      phases: ['going', 'coming-back'],
      seen: 'The trunk tips and straightens from the hip, and the knee stays behind the toes. A camera in front cannot measure it: look from the side, or ask for a clip from the side.',
      cue: 'Knee forward over the toes, chest up.',
    },
  ],
  dose: {
    sets: 2,
    repetitions: 10,
    restSeconds: 60,
    worksUpTo: { min: 20, max: 25 },
    source: commonPractice,
  },
  felt: 'thigh-and-buttock',

  preparation: {
    needs: ['chair', 'clear-floor', 'support'],
    isFilmed: true,
    start: 'seated',
    easyBends: false,
  },

  figure: {
    start: {
      pelvis: at(0, seatedY, seatZ),
      leanDeg: 0,
      armDeg: 45,
      own: onFloor(workingX),
      free: onFloor(freeX, -0.13),
      prop: chair,
    },
    end: {
      pelvis: at(0, uprightY - 0.006, -0.04),
      leanDeg: 0,
      own: onFloor(workingX),
      free: onFloor(freeX, -0.13),
      prop: chair,
    },
  },
};
