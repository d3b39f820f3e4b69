import { commonPractice, type TaskDefinition } from '../exercise';
import { at, chair, freeX, onFloor, seatedY, seatZ, uprightY, workingX } from '../figure/stance';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from '../library/kneeFaults';
import { towardsTwenty } from '../stage';

export const singleLegSitToStand: TaskDefinition<'single-leg-sit-to-stand'> = {
  kind: 'task',
  id: 'single-leg-sit-to-stand',
  shape: 'rise',
  workingFoot: 'stiller',
  onBothFeet: false,
  freeFootReach: 0,
  viewSigns: ['thighs', 'stance-foot'],
  treatmentOrder: 80,

  purpose: 'Shows and trains whether one leg alone can lift and lower the body with the knee over the foot.',
  stages: [
    {
      id: 'seat-50-fingertip',
      words: 'Seat 50 cm, a fingertip on something firm.',
      seatHeightCm: 50,
      support: 'fingertip',
      ...towardsTwenty,
    },
    { id: 'seat-50', words: 'Seat 50 cm, no hand.', seatHeightCm: 50, support: 'none', ...towardsTwenty },
    { id: 'seat-46', words: 'Seat 46 cm.', seatHeightCm: 46, support: 'none', ...towardsTwenty },
    { id: 'seat-42', words: 'Seat 42 cm.', seatHeightCm: 42, support: 'none', ...towardsTwenty },
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
      cue: 'Knee forward over the toes, then push, without a swing.',
    },
    {
      direction: 'other',
      phases: ['going', 'coming-back'],
      seen: 'The trunk tips and straightens from the hip, and the knee stays behind the toes. A camera in front cannot measure it: look from the side, or ask for a clip from the side.',
      cue: 'Knee forward over the toes, chest up.',
    },
  ],
  dose: { sets: 2, repetitions: 8, restSeconds: 90, worksUpTo: null, source: commonPractice },
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
      free: at(freeX, 0.1, 0.06),
      prop: chair,
    },
    end: {
      pelvis: at(-0.03, uprightY - 0.004, -0.01),
      leanDeg: 0,
      own: onFloor(workingX),
      free: at(freeX, 0.12, 0.12),
      prop: chair,
    },
  },
};
