import type { GuidePress, StopPress } from '../guide/guideEvent';

/** The presses that have a button in the film screen; the reasons for a stop have their own list. */
export type Offered = Exclude<GuidePress, StopPress>;
