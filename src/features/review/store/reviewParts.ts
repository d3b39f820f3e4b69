import type { TimedSetup } from '#core/measurement/measureSet';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import type { ReviewAdapters } from './reviewAdapters';
import type { ReviewKeeper } from './reviewKeeper';
import type { ReviewState } from './reviewState';

/** What the parts of the review share. */
export interface ReviewParts {
  adapters: ReviewAdapters;
  get: () => ReviewState;
  set: (part: Partial<ReviewState>) => void;
  keeper: ReviewKeeper;
  showing: Showing;
  /** Resolves once the closer look that is under way is over; never rejects. */
  closerLook: { current: Promise<void> };
}

export interface Showing {
  /** @param part  what changes with the recording */
  show(recording: ShownRecording, part: Partial<ReviewState>): void;
  /** Shows the same recording measured otherwise, on the same repetition; does nothing outside the review. */
  replace(again: ShownRecording): void;
  /** Measures what is shown again, with the corrections in force; does nothing outside the review. */
  measureAgain(setup?: TimedSetup): void;
}
