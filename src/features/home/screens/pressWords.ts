import type { GuidePress, StopPress } from '../guide/guideEvent';

/** The presses that have a button in the film screen; the reasons for a stop have their own list. */
export type Offered = Exclude<GuidePress, StopPress>;

export const pressWords: Record<Offered, string> = {
  pause: 'Pause',
  resume: 'Continue',
  'start-anyway': 'Start anyway',
  'skip-rest': 'Skip the rest',
  'end-set': 'End this set',
  stop: 'Stop',
  end: 'End for today',
};
