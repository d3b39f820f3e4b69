import type { Review } from '#features/review/store/review';
import type { Navigation } from '#shell/navigation/createNavigation';
import type { Tracking } from '#shell/tracking/createTracking';

interface Parts {
  review: Pick<Review, 'store'>;
  tracking: Pick<Tracking, 'store' | 'cancel'>;
}

/** Asks before leaving a screen whose work is not saved yet. */
export function guardLeaving(
  navigation: Pick<Navigation, 'screen' | 'guard'>,
  { review, tracking }: Parts,
): void {
  navigation.guard({
    question: () =>
      tracking.store.getState().isTracking
        ? {
            title: 'Stop measuring this video?',
            sentence:
              'The joints are still being found. If you leave, this will start from the beginning next time.',
            leave: 'Stop and leave',
          }
        : null,
    confirmed: tracking.cancel,
  });
  navigation.guard({
    question(to) {
      const { state } = review.store.getState().keeping;
      if (state === 'measured' && to === null)
        return {
          title: 'Leave without saving?',
          sentence: 'What was measured from this video is not saved. Closing this page loses it.',
          leave: 'Leave without saving',
        };
      // The mirror leads back to the review; another screen can be left for it while saving continues.
      const isLost = to === null ? !['kept', 'not-kept'].includes(state) : state === 'unsaved';
      if (!isLost || to === 'mirror' || (to !== null && navigation.screen() !== 'review')) return null;
      return {
        title: 'Leave without saving?',
        sentence:
          'Your changes to this recording are not saved. They will be lost when another recording is opened or this page is closed.',
        leave: 'Leave without saving',
      };
    },
  });
}
