import type { Mirror } from '#features/mirror/store/createMirror';
import type { Navigation } from '#shell/navigation/createNavigation';

/** Asks before the mirror is left with a recording that is not kept yet. */
export function guardMirror(
  navigation: Pick<Navigation, 'screen' | 'guard'>,
  mirror: Pick<Mirror, 'store'>,
): void {
  navigation.guard({
    question(to) {
      const { state } = mirror.store.getState().recording;
      if (state !== 'running' && state !== 'done') return null;
      if (to !== null && navigation.screen() !== 'mirror') return null;
      return {
        title: 'Leave the recording?',
        sentence:
          'What you recorded in the mirror is in this page’s memory only. It is lost when the page is closed.',
        leave: 'Leave',
      };
    },
  });
}
