import type { GuidePhase } from '../guide/guideState';

const phases: readonly GuidePhase[] = [
  'placing',
  'bends',
  'standing',
  'ready',
  'countdown',
  'working',
  'finishing',
  'set-done',
];

/** Whether the person is three metres away in this phase: what matters is shown large, and buttons make room for it. */
export function isFar(phase: GuidePhase): boolean {
  return phases.includes(phase);
}
