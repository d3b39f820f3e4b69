import type { App } from '#features/review/store/createApp';
import type { Navigation } from '#shell/navigation/createNavigation';
import type { Tracking } from '#shell/tracking/createTracking';

interface Parts {
  app: Pick<App, 'store'>;
  tracking: Pick<Tracking, 'store' | 'cancel'>;
}

/** Asks before a screen is left whose work is not kept yet. */
export function guardLeaving(
  navigation: Pick<Navigation, 'screen' | 'guard'>,
  { app, tracking }: Parts,
): void {
  navigation.guard({
    question: () =>
      tracking.store.getState().isTracking
        ? {
            title: 'Stop measuring this video?',
            sentence:
              'The joints are still being found. If you leave, this starts from the beginning next time.',
            leave: 'Stop and leave',
          }
        : null,
    confirmed: tracking.cancel,
  });
  navigation.guard({
    question(to) {
      const { state } = app.store.getState().keeping;
      // The mirror leads back to the review; another screen can be left for it while saving goes on.
      const isLost = to === null ? state !== 'kept' && state !== 'not-kept' : state === 'unsaved';
      if (!isLost || to === 'mirror' || (to !== null && navigation.screen() !== 'review')) return null;
      return {
        title: 'Leave without saving?',
        sentence:
          'Your changes to this recording are not saved. They are lost when another recording is opened or this page is closed.',
        leave: 'Leave without saving',
      };
    },
  });
}
