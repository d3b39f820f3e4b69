import { createStoreContext } from '#shell/createStoreContext';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import type { Review } from './store/review';

/** Tracking and reviewing a recording. */
export const {
  Provider: ReviewProvider,
  useOwner: useReview,
  useOwnerState: useReviewState,
} = createStoreContext<Review>('ReviewProvider');

export function useRecording(): ShownRecording | null {
  return useReviewState(({ recording }) => recording);
}
