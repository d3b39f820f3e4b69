import type { HomeApp } from './homeApp';
import { partOf, type HomeSet, type HomeState } from './homeState';
import type { HomeStore } from './homeStore';

/** Those that the result tells of. */
export function toldSets({ sets }: Pick<HomeState, 'sets'>): readonly HomeSet[] {
  return sets.filter(({ isDiscarded }) => !isDiscarded);
}

/** Whether every set is kept, and no better numbers are to come. */
function isFinal(sets: readonly HomeSet[]): boolean {
  return sets.every(({ keeping, numbers }) => keeping !== 'finishing' && numbers !== 'coming');
}

/** The pages of the result. Once its numbers are final it is fixed, so that none changes while it is read. */
export function telling({
  store,
  get,
  change,
}: HomeStore): Pick<HomeApp, 'showFirstNumbers' | 'showSendingNow'> {
  store.subscribe((state) => {
    if (state.step !== 'summary' || state.told !== null || state.saving === 'saving') return;
    const sets = toldSets(state);
    if (isFinal(sets)) change('summary', { told: sets });
  });
  return {
    showFirstNumbers() {
      const sets = toldSets(get());
      const isMeasured = sets.every(({ keeping }) => keeping !== 'finishing');
      if (isMeasured && partOf(get(), 'summary').told === null) change('summary', { told: sets });
    },
    showSendingNow: () => change('summary', { page: 'send' }),
  };
}

/** How much of the careful measuring of these sets is done, 0 to 1. */
export function measuredShare(
  sets: readonly HomeSet[],
  { current }: Pick<HomeState['background'], 'current'>,
): number {
  const own = sets.filter(({ numbers }) => numbers === 'coming' || numbers === 'careful');
  const done = own.map(({ numbers, recordingId }) => {
    if (numbers === 'careful') return 1;
    return current !== null && current.id === recordingId ? current.share : 0;
  });
  return own.length === 0 ? 0 : done.reduce((sum, one) => sum + one, 0) / own.length;
}
