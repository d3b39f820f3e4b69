import { stopPresses, type GuidePress } from './guideEvent';
import type { GuideState } from './guideState';

const always: readonly GuidePress[] = ['stop', ...stopPresses, 'end'];

/** The buttons allowed in the guide's current state; any other press is ignored. */
export function allowedPresses({
  phase,
  pausedFrom,
  pauseReason,
  isPainTold,
}: GuideState): readonly GuidePress[] {
  switch (phase) {
    case 'placing':
      return ['start-anyway', 'pause', 'end-set', ...always];
    case 'bends':
    case 'standing':
    case 'ready':
    case 'countdown':
    case 'working':
      return ['pause', 'end-set', ...always];
    case 'paused':
      return pausedFrom === 'resting' || pauseReason === 'stop'
        ? ['resume', ...always]
        : ['resume', 'end-set', ...always];
    case 'resting':
      return isPainTold ? ['skip-rest', 'pause', ...always] : ['pause', ...always];
    case 'finishing':
    case 'set-done':
      return always;
    case 'all-done':
    case 'stopped':
      return [];
  }
}
