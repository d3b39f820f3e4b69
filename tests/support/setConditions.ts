import type { SetConditions } from '#core/conditions/setConditions';

/** A single-leg sit-to-stand, done as a test; all is noted but what is given. */
export function conditionsOf(given: Partial<SetConditions> = {}): SetConditions {
  return {
    task: 'single-leg-sit-to-stand',
    side: 'right',
    stage: 'seat-46',
    seatHeightCm: 46,
    stepHeightCm: null,
    support: 'none',
    load: { kind: 'none' },
    footwear: 'shoes',
    freeLeg: 'front',
    feedback: 'none',
    bendsFilmed: true,
    isTest: true,
    measuringVersion: 7,
    ...given,
  };
}

/** The same with something else in one condition, of every condition: what a comparison has to notice. */
export const unlike: Partial<SetConditions>[] = [
  { task: 'lateral-step-down' },
  { side: 'left' },
  { stage: 'seat-42' },
  { seatHeightCm: 50 },
  { stepHeightCm: 20 },
  { support: 'fingertip' },
  { load: { kind: 'tube', level: 'light', where: 'ankle' } },
  { footwear: 'bare-feet' },
  { freeLeg: 'behind' },
  { feedback: 'every-repetition' },
  { bendsFilmed: false },
  { isTest: false },
  { measuringVersion: 6 },
];
